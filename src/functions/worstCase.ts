import * as core from "../core/index.js";
import { allowed, choice, text } from "./ask.js";
import { type Ask, BLANK, cell, rowsOf } from "./cell.js";

/**
 * What a network is made of.
 * @customenum {string}
 */
export enum NetworkKind {
  Resistor = "resistor",
  Capacitor = "capacitor",
  Inductor = "inductor",
}

/**
 * How far a network may lie from its nominal ohms or farads: at worst, and as likely as root-sum-square has it.
 * @customfunction WORST_CASE
 * @helpurl reference.html#WORST_CASE
 * @param network The parts, + in series and || in parallel, such as 100 k + 22 k or (1 M || 1 M) + 47 k.
 * @param tolerance One tolerance for all parts, or a range with one for each in the order written: a ratio such as 5%, or text.
 * @param kind resistor (when left out), capacitor or inductor.
 * @returns The nominal value, the smallest and largest at worst, and the smallest and largest by root-sum-square.
 * @example LUG.WORST_CASE("100 k + 100 k", 5%) -> {200000, 190000, 210000, 192928.932, 207071.068}
 */
export function worstCase(network: unknown[][], tolerance: unknown[][], kind?: NetworkKind[][]): unknown[][] {
  return cell(() => {
    const { nominal, worst, likely } = core.worstCase(...tolerantNetwork(network, tolerance, kind));
    return [[nominal, worst.min, worst.max, likely.min, likely.max]];
  });
}

const KINDS = ["resistor", "capacitor", "inductor"] as const;

/**
 * A network written in one cell, each part with its tolerance: one for all, or one for each in the order written.
 *
 * @throws PartsError when the network can't be read, or there are neither one nor as many tolerances as parts
 */
function tolerantNetwork(
  network: unknown,
  tolerance: unknown,
  kind: unknown,
): [core.Network<core.TolerantPart>, (typeof KINDS)[number]] {
  const of = first(choice(kind, "kind", KINDS, "resistor"), "the kind");
  const plain = core.readNetwork(first(text(network), "the network"), of);
  const reader = allowed(tolerance, "tolerance");
  const tolerances = rowsOf(tolerance)
    .flat()
    .map(reader.read)
    .filter((each) => each !== BLANK);
  const count = core.partsOf(plain).length;
  if (tolerances.length !== 1 && tolerances.length !== count) {
    throw new core.PartsError(
      "conflict",
      `${count} parts and ${tolerances.length} tolerances`,
      "Give one for all, or one for each.",
    );
  }
  let at = 0;
  const withTolerance = (value: number) => ({
    value,
    tolerance: tolerances.length === 1 ? tolerances[0]! : tolerances[at++]!,
  });
  return [core.mapNetwork(plain, withTolerance), of];
}

function first<T>(ask: Ask<T>, what: string): T {
  const found = ask.read(rowsOf(ask.given)[0]![0]!);
  if (found === BLANK) throw new core.PartsError("not-a-list", what, "Fill the cell it is taken from.");
  return found;
}
