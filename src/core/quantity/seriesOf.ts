import { PartsError } from "../problem.js";
import { decadeOf, timesPowerOfTen } from "./powersOfTen.js";

const FIRST = 100;
const PAST = 1000;
const LEAST = 1e-15;
const MOST = 1e15;

/**
 * A series that repeats in every decade.
 *
 * `steps` are one decade in three figures (100 to 999), rising. `usualTolerance` is the tolerance its parts are commonly
 * made with, null where there is none. `lastUpTo` is an index for searching: for each of the 900 three-figure numbers
 * the place of the last step not above it.
 */
export type Series = {
  readonly name: string;
  readonly steps: readonly number[];
  readonly usualTolerance: number | null;
  readonly lastUpTo: Uint8Array;
};

/**
 * A series from the steps of one decade.
 *
 * @param steps Three-figure whole numbers, 100 first, rising, at most 256.
 * @example seriesOf("ones", [100, 200, 500], null)
 */
export function seriesOf(name: string, steps: readonly number[], usualTolerance: number | null): Series {
  const lastUpTo = new Uint8Array(PAST - FIRST);
  let place = 0;
  for (let figure = FIRST; figure < PAST; figure++) {
    while (place + 1 < steps.length && steps[place + 1]! <= figure) place++;
    lastUpTo[figure - FIRST] = place;
  }
  return { name, steps, usualTolerance, lastUpTo };
}

/**
 * The value that stands at a place of a series: place 0 is 1, one series length further on is 10.
 *
 * @param place Any whole number, negative below 1.
 * @example stepAt(SERIES.E12, 13) // 12
 */
export function stepAt(series: Series, place: number): number {
  const decade = Math.floor(place / series.steps.length);
  return timesPowerOfTen(series.steps[place - decade * series.steps.length]!, decade - 2);
}

/**
 * The place of the last value of a series that is not above the one given.
 *
 * @param value Any positive value from 1e-15 to 1e15, in base units.
 * @throws PartsError "out-of-range" for anything else.
 * @example placeUpTo(52_000, SERIES.E12) // 56, where 47_000 stands
 */
export function placeUpTo(value: number, series: Series): number {
  if (!(value >= LEAST && value <= MOST)) {
    throw new PartsError("out-of-range", value, "A value lies above zero, between 1e-15 and 1e15.");
  }
  const decade = decadeOf(value);
  const figure = Math.min(PAST - 1, Math.max(FIRST, Math.floor(value / timesPowerOfTen(1, decade - 2))));
  const guess = decade * series.steps.length + series.lastUpTo[figure - FIRST]!;
  if (stepAt(series, guess) > value) return guess - 1;
  return stepAt(series, guess + 1) <= value ? guess + 1 : guess;
}
