import type { BasketLine } from "../plan.js";
import type { Candidate } from "./scope.js";

/** What a line takes from one offer, and what that adds to the goods, in the user's currency. */
export type Share = { readonly candidate: Candidate; readonly pieces: number; readonly cost: number };

/** The cheapest way to serve one line, shipping aside. */
export type LineChoice = { readonly cost: number; readonly shares: readonly Share[] };

/** An offer with what 0, 1, 2 ... pieces of it cost in the user's currency, infinite where so many can't be had. */
export type Priced = { readonly candidate: Candidate; readonly curve: ArrayLike<number> };

/**
 * The cheapest mix of offers for one line; null where they can't supply it.
 *
 * Min-plus over pieces: best[p] is the least cost of p pieces from the offers seen so far. Exact for packs, breaks,
 * minimums, multiples, short stock and splits.
 */
export function cheapestMix(line: BasketLine, offers: readonly Priced[]): LineChoice | null {
  return line.single ? cheapestSource(line, offers) : cheapestSplit(line.pieces, offers);
}

function cheapestSource({ pieces }: BasketLine, offers: readonly Priced[]): LineChoice | null {
  let best: LineChoice | null = null;
  for (const { candidate, curve } of offers) {
    const cost = curve[pieces]!;
    if (cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { cost, shares: [{ candidate, pieces, cost }] };
  }
  return best;
}

function cheapestSplit(pieces: number, offers: readonly Priced[]): LineChoice | null {
  const best = new Float64Array(pieces + 1).fill(Number.POSITIVE_INFINITY);
  best[0] = 0;
  const taken = offers.map(({ curve }) => {
    const counts = usefulCounts(curve, pieces);
    const from = new Int32Array(pieces + 1);
    for (let p = pieces; p > 0; p--)
      for (const count of counts) {
        const cost = best[Math.max(0, p - count)]! + curve[Math.min(count, p)]!;
        if (cost < best[p]!) {
          best[p] = cost;
          from[p] = Math.min(count, p);
        }
      }
    return from;
  });
  if (best[pieces] === Number.POSITIVE_INFINITY) return null;
  return { cost: best[pieces]!, shares: sharesOf(pieces, offers, taken) };
}

/** The counts worth taking from an offer: the last at each price, since one more would cost more. */
function usefulCounts(curve: ArrayLike<number>, pieces: number): number[] {
  const counts: number[] = [];
  for (let p = 1; p <= pieces; p++)
    if (curve[p]! < Number.POSITIVE_INFINITY && (p === pieces || curve[p + 1]! > curve[p]!)) counts.push(p);
  return counts;
}

function sharesOf(pieces: number, offers: readonly Priced[], taken: readonly Int32Array[]): readonly Share[] {
  const shares: Share[] = [];
  let left = pieces;
  for (let i = offers.length - 1; i >= 0; i--) {
    const count = taken[i]![left]!;
    if (count === 0) continue;
    shares.push({ candidate: offers[i]!.candidate, pieces: count, cost: offers[i]!.curve[count]! });
    left -= count;
  }
  return shares;
}
