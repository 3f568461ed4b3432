import { PartsError } from "../problem.js";
import type { Series } from "./seriesOf.js";
import { placeUpTo } from "./seriesOf.js";

/**
 * All values of a series from the smallest to the largest wanted, ends included, over any number of decades.
 *
 * @param min Smallest value, in base units; from 1e-15.
 * @param max Largest value, in the same unit; up to 1e15.
 * @throws PartsError "conflict" when min lies above max, "out-of-range" as nearest does.
 * @see IEC 60063:2015
 * @example stepsBetween(1, 10, SERIES.E3) // [1, 2.2, 4.7, 10]
 */
export function stepsBetween(min: number, max: number, series: Series): readonly number[] {
  if (min > max) throw new PartsError("conflict", `From ${min} and to ${max}`, "Give the smaller value first.");
  const last = placeUpTo(max, series);
  const upToMin = placeUpTo(min, series);
  const first = series.values[upToMin] === min ? upToMin : upToMin + 1;
  return Array.from(series.values.subarray(first, last + 1));
}
