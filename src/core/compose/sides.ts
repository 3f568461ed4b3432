import type { Span } from "../part.js";
import { SLACK } from "./meets.js";
import type { Limits, Side } from "./sideSearch.js";
import { reciprocals, sortedPairs, sortedSingles } from "./sortedSums.js";
import type { StockPart } from "./stock.js";
import { bearableVolts, bearableWatts, type Wants } from "./wants.js";

/** Both ways to look at a stock: joined in series outermost, and in parallel outermost. */
export type Sides = { readonly series: Side; readonly parallel: Side };

/** The sorted sums of a stock for both sides; those of pairs only where four parts are allowed. */
export function sidesOf(parts: readonly StockPart[], oppositions: Float64Array, wants: Wants, window: Span): Sides {
  const [series, parallel] = sumsOf(wants.stock, oppositions, (wants.mostParts ?? 4) > 3);
  const [bySeries, byParallel] = capsOf(parts, oppositions, wants, window);
  return {
    series: { ...series, caps: bySeries, limits: { low: window.min, high: window.max } },
    parallel: { ...parallel, caps: byParallel, limits: { low: 1 / window.max, high: 1 / window.min } },
  };
}

type SideSums = Omit<Side, "caps" | "limits">;
type Remembered = {
  readonly oppositions: Float64Array;
  readonly deep: boolean;
  readonly sums: readonly [SideSums, SideSums];
};

/** Sums already sorted for a stock: sorting takes as long as searching, and a column asks for many values of one stock. */
const remembered = new WeakMap<readonly StockPart[], Remembered>();

function sumsOf(stock: readonly StockPart[], oppositions: Float64Array, deep: boolean): readonly [SideSums, SideSums] {
  const known = remembered.get(stock);
  const isSame =
    known?.oppositions.length === oppositions.length && oppositions.every((r, i) => r === known.oppositions[i]);
  if (known && isSame && known.deep === deep) return known.sums;
  const sums = sortedSums(oppositions, deep);
  remembered.set(stock, { oppositions, deep, sums });
  return sums;
}

function sortedSums(oppositions: Float64Array, deep: boolean): readonly [SideSums, SideSums] {
  const ease = oppositions.map((ohms) => 1 / ohms);
  const [adding, dividing] = [sortedSingles(oppositions), sortedSingles(ease)];
  const [pairs, inversePairs] = [oppositions, ease].map((numbers) => sortedPairs(deep ? numbers : new Float64Array(0)));
  return [
    {
      singles: adding,
      inverses: dividing,
      pairs: pairs!,
      inversePairs: inversePairs!,
      blocks: reciprocals(inversePairs!),
    },
    { singles: dividing, inverses: adding, pairs: inversePairs!, inversePairs: pairs!, blocks: reciprocals(pairs!) },
  ];
}

/**
 * The shares of the whole's volts, and of its current, that each part may bear.
 *
 * Of W watts in all, a part that takes the share v of the volts takes v² R / r of the watts, and with the share i of the
 * current i² r / R; R is taken at the end of the window that lets more through: what is left is looked at again.
 */
function capsOf(
  parts: readonly StockPart[],
  oppositions: Float64Array,
  wants: Wants,
  window: Span,
): [Float64Array | null, Float64Array | null] {
  if (!wants.watts && !wants.volts) return [null, null];
  const watts = parts.map((part) => (bearableWatts(part, wants) * (1 + 2 * SLACK)) / (wants.watts || 1));
  const volts = parts.map((part) => (bearableVolts(part, wants) * (1 + 2 * SLACK)) / (wants.volts || 1));
  return [
    oppositions.map((r, i) => Math.min(Math.sqrt((watts[i]! * r) / window.min), volts[i]!)),
    oppositions.map((r, i) => Math.min(Math.sqrt((watts[i]! * window.max) / r), (volts[i]! * window.max) / r)),
  ];
}

/** Narrows what both sides look for to what is no further off than `reach`. */
export function narrow(sides: Sides, wanted: number, window: Span, reach: number): void {
  const ratio = Math.exp(reach + 1e-12);
  const low = Math.max(window.min, wanted / ratio);
  const high = Math.min(window.max, wanted * ratio);
  set(sides.series.limits, low, high);
  set(sides.parallel.limits, 1 / high, 1 / low);
}

function set(limits: Limits, low: number, high: number): void {
  limits.low = low;
  limits.high = high;
}
