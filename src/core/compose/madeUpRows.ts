import { PartsError } from "../problem.js";
import type { Cell } from "../table.js";
import { type MadeUp, makeUp } from "./makeUp.js";
import { withValues } from "./network.js";
import { writeNetwork } from "./networkText.js";
import type { Wants } from "./wants.js";

/**
 * The best networks as rows of a sheet: drawing, value, how far off, what share each part bears, and the price.
 *
 * @throws PartsError none-within when no network meets the wants; it says when the search was broken off
 * @example madeUpRows({ kind: "capacitor", wanted: 250e-12, window, stock })[0][0] // "220 pF || 30 pF"
 */
export function madeUpRows(wants: Wants): Cell[][] {
  const { found, complete } = makeUp(wants);
  if (found.length > 0) return found.map((one) => rowOf(one, wants));
  const { min, max } = wants.window;
  const within = `${percent(Math.max(max / wants.wanted - 1, 1 - min / wants.wanted))}`;
  const so = complete ? "" : " The search was broken off: there were too many to look at.";
  throw new PartsError("none-within", within, `Allow more, or more parts, or give parts of higher ratings.${so}`);
}

function rowOf({ network, value, off, shares, price }: MadeUp, { kind }: Wants): Cell[] {
  const share = kind === "capacitor" ? ("volts" as const) : ("power" as const);
  const bears = shares.map((one) => percent(one[share])).join(", ");
  return [writeNetwork(withValues(network), kind), value, off, bears, price];
}

function percent(ratio: number): string {
  return `${Number((ratio * 100).toPrecision(3))} %`;
}
