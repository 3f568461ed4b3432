import type { BasketLine, Vendor } from "../plan.js";
import { cheapestMix, type LineChoice, type Priced } from "./lineCost.js";
import type { Candidate, Scope } from "./scope.js";

/** A set of vendors: one flag for each vendor of the scope. */
export type VendorSet = readonly boolean[];

/** The cheapest way to serve a line from a set of vendors, worked out once for each mix of the vendors it can come from. */
export type LineTable = {
  readonly line: BasketLine;
  readonly best: (set: VendorSet) => LineChoice | null;
  readonly least: (set: VendorSet) => number;
};

/** One table for each line. */
export function lineTables(scope: Scope, lines: readonly BasketLine[]): readonly LineTable[] {
  const place = new Map(scope.vendors.map(({ id }, i) => [id, i]));
  return lines.map((line) => lineTable(line, scope.byLine.get(line.id)!, place));
}

function lineTable(line: BasketLine, priced: readonly Candidate[], place: ReadonlyMap<string, number>): LineTable {
  const shared = priced.some(({ lines }) => lines.length > 1);
  const floor = shared ? priced.map((candidate) => ({ candidate, curve: floorOf(candidate, line.pieces) })) : [];
  const at = priced.map(({ vendor }) => place.get(vendor.id)!);
  const memo = new Map<number, readonly [LineChoice | null, number]>();
  const look = (set: VendorSet) => {
    const key = at.reduce((bits, i) => 2 * bits + (set[i] ? 1 : 0), 0);
    const known = memo.get(key);
    if (known) return known;
    const inSet = <T>(list: readonly T[]) => list.filter((_, i) => set[at[i]!]);
    const best = cheapestMix(line, inSet(priced).map(alone));
    const least = shared ? cheapestMix(line, inSet(floor)) : best;
    const found = [best, least?.cost ?? Number.POSITIVE_INFINITY] as const;
    memo.set(key, found);
    return found;
  };
  return { line, best: (set) => look(set)[0], least: (set) => look(set)[1] };
}

/** An offer of which nobody else takes. */
const alone = (candidate: Candidate): Priced => ({ candidate, curve: candidate.curve });

/**
 * What pieces of an offer cost a line at the very least, whoever shares its packs and breaks.
 *
 * Whatever total is bought, a line's part of its cost by pieces is never less than at the best total it can belong to;
 * these parts add up to the cost, so their sum over lines is a bound.
 */
function floorOf({ lines, curve }: Candidate, pieces: number): ArrayLike<number> {
  if (lines.length === 1) return curve;
  const floor = new Float64Array(pieces + 1);
  let piece = Number.POSITIVE_INFINITY;
  for (let total = curve.length - 1; total > 0; total--) {
    piece = Math.min(piece, curve[total]! / total);
    if (total <= pieces) floor[total] = piece * total;
  }
  return floor;
}

/** What a vendor adds to a plan at the very least, goods aside; in the user's currency. */
export function leastShipping({ shipping, freeFrom, rate }: Vendor): number {
  return freeFrom === null ? shipping * rate : 0;
}
