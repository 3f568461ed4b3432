import { PartsError } from "../problem.js";
import { powerOfTen, timesPowerOfTen } from "./powersOfTen.js";

const LEAST = 1e-15;
const MOST = 1e15;
const LOWEST_DECADE = -16;
const DECADES = 33;

/**
 * A series that repeats in every decade.
 *
 * `steps` are one decade in three figures (100 to 999), rising. `usualTolerance` is the tolerance its parts are commonly
 * made with, null where there is none. Two indexes make searching fast: `values` are all values from 1e-16 to 9.99e16,
 * and `lastUpTo` has for every number up to 1000 the place of the last step not above it.
 */
export type Series = {
  readonly name: string;
  readonly steps: readonly number[];
  readonly usualTolerance: number | null;
  readonly values: Float64Array;
  readonly lastUpTo: Uint8Array;
};

/**
 * A series from the steps of one decade.
 *
 * @param steps Three-figure whole numbers, 100 first, rising, at most 256.
 * @example seriesOf("ones", [100, 200, 500], null)
 */
export function seriesOf(name: string, steps: readonly number[], usualTolerance: number | null): Series {
  const values = Float64Array.from({ length: DECADES * steps.length }, (_, index) => {
    const decade = LOWEST_DECADE + Math.floor(index / steps.length);
    return timesPowerOfTen(steps[index % steps.length]!, decade - 2);
  });
  const lastUpTo = Uint8Array.from({ length: 1001 }, (_, figure) =>
    Math.max(0, steps.filter((step) => step <= figure).length - 1),
  );
  return { name, steps, usualTolerance, values, lastUpTo };
}

/**
 * Where in a series' `values` the last one stands that is not above the value given.
 *
 * @param value Any positive value from 1e-15 to 1e15, in base units.
 * @throws PartsError "out-of-range" for anything else.
 * @example SERIES.E12.values[placeUpTo(52_000, SERIES.E12)] // 47_000
 */
export function placeUpTo(value: number, series: Series): number {
  if (!(value >= LEAST && value <= MOST)) {
    throw new PartsError("out-of-range", value, "A value lies above zero, between 1e-15 and 1e15.");
  }
  // Both may be one off by rounding; the two loops put that right.
  const decade = Math.floor(Math.log10(value)) | 0;
  const figure = (value * powerOfTen(2 - decade)) | 0;
  let place = (decade - LOWEST_DECADE) * series.steps.length + series.lastUpTo[figure]!;
  while (series.values[place]! > value) place--;
  while (series.values[place + 1]! <= value) place++;
  return place;
}
