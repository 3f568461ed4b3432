import type { Kind, Span } from "../part.js";
import { PartsError } from "../problem.js";
import type { Cell } from "../table.js";
import { type MadeUp, makeUp } from "./makeUp.js";
import { mapNetwork, type Network, networkValue, withValues } from "./network.js";
import { writeNetwork } from "./networkText.js";
import type { StockPart } from "./stock.js";
import type { Wants } from "./wants.js";

/**
 * The best networks as rows of a sheet: drawing, value, how far off, what share each part bears, and the price.
 *
 * @throws PartsError none-within when no network meets the wants; it says how far off the nearest is that otherwise does
 * @example madeUpRows({ kind: "capacitor", wanted: 250e-12, window, stock })[0][0] // "220 pF || 30 pF"
 */
export function madeUpRows(wants: Wants): Cell[][] {
  const { found, complete } = makeUp(wants);
  if (found.length > 0) return found.map((one) => rowOf(one, wants));
  const within = furthest(wants.window, wants.wanted);
  throw new PartsError("none-within", percent(within), complete ? nearestBeyond(wants, within) : BROKEN_OFF);
}

const BROKEN_OFF =
  "The search was broken off, there were too many to look at: ask for less, or give parts of higher ratings.";

function rowOf({ network, value, off, shares, price }: MadeUp, { kind }: Wants): Cell[] {
  const share = kind === "capacitor" ? ("volts" as const) : ("power" as const);
  const bears = shares.map((one) => percent(one[share])).join(", ");
  return [writeNetwork(withValues(network), kind), value, off, bears, price];
}

/** How far off the printed values may be where the nearest is looked for: a narrow window is searched much faster. */
const WIDER = [0.01, 0.05, 0.25, 0.9];

/** How far off the nearest network is that meets all other wants, and what to change. */
function nearestBeyond(wants: Wants, within: number): string {
  for (const wider of WIDER) {
    const window = widened(wants, wider);
    if (furthest(window, wants.wanted) <= within) continue;
    const { found, complete } = makeUp({ ...wants, window, first: "nearest", list: 1 });
    if (found[0]) return nearestText(found[0], complete, wants);
    if (!complete) return BROKEN_OFF;
  }
  return "Nor is there one of a value nearby: give other values, parts of higher ratings, more parts, or a higher price.";
}

/** A window for values so far off, with room for the closest tolerance of the stock. */
function widened({ wanted, stock }: Wants, off: number): Span {
  const least = (side: "minus" | "plus") => Math.min(1, ...stock.map(({ tolerance }) => tolerance?.[side] ?? 0));
  return { min: wanted * (1 - off) * (1 - least("minus")), max: (wanted / (1 - off)) * (1 + least("plus")) };
}

function nearestText(nearest: MadeUp, complete: boolean, wants: Wants): string {
  const which = complete ? "The nearest that does" : "The nearest found before the search was broken off";
  const { min, max } = ends(nearest.network, wants.kind);
  const ofAll = min < max ? `, ${percent(furthest({ min, max }, wants.wanted))} at the ends of its tolerances` : "";
  const [drawing] = rowOf(nearest, wants);
  return `${which} is ${percent(Math.abs(nearest.off))} off${ofAll}: ${drawing}. Allow more, or more parts, or give others.`;
}

/** What a network comes to with all its parts at the one and at the other end of their tolerance. */
function ends(network: Network<StockPart>, kind: Kind): Span {
  const at = (end: (part: StockPart) => number) => networkValue(mapNetwork(network, end), kind);
  return {
    min: at(({ value, tolerance }) => value * (1 - (tolerance?.minus ?? 0))),
    max: at(({ value, tolerance }) => value * (1 + (tolerance?.plus ?? 0))),
  };
}

/** How far off the further end of a span is, as a ratio of the value wanted. */
function furthest({ min, max }: Span, wanted: number): number {
  return Math.max(max / wanted - 1, 1 - min / wanted);
}

function percent(ratio: number): string {
  return `${Number(Number((ratio * 100).toPrecision(3)).toFixed(3))} %`;
}
