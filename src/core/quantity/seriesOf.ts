import { PartsError } from "../problem.js";
import { powerOfTen, timesPowerOfTen } from "./powersOfTen.js";

const LEAST = 1e-15;
const MOST = 1e15;
const LOWEST_DECADE = -16;
const DECADES = 33;

/** Two distances this close to each other are the same but for rounding: 2 µ lies between 1.6 and 2.5 as 2 does. */
const TIE = 1e-9;

/**
 * A series that repeats in every decade.
 *
 * `steps` are one decade in three figures (100 to 999), rising. `usualTolerance` is the tolerance its parts are commonly
 * made with, null where there is none. The rest makes searching fast: `values` are all values from 1e-16 to 9.99e16,
 * `turns` for each of them the size above which the next one is nearer by ratio, and for every number up to 1000
 * `lastUpTo` has the place of the last step not above it, `nearestTo` of the step nearest to it.
 */
export type Series = {
  readonly name: string;
  readonly steps: readonly number[];
  readonly usualTolerance: number | null;
  readonly values: Float64Array;
  readonly turns: Float64Array;
  readonly lastUpTo: Uint8Array;
  readonly nearestTo: Uint8Array;
};

/**
 * A series from the steps of one decade.
 *
 * @param steps Three-figure whole numbers, 100 first, rising, at most 255.
 * @example seriesOf("ones", [100, 200, 500], null)
 */
export function seriesOf(name: string, steps: readonly number[], usualTolerance: number | null): Series {
  const values = Float64Array.from({ length: DECADES * steps.length }, (_, index) => {
    const decade = LOWEST_DECADE + Math.floor(index / steps.length);
    return timesPowerOfTen(steps[index % steps.length]!, decade - 2);
  });
  const turn = (below: number, above: number) => Math.sqrt(below * above) * (1 + TIE / 2);
  const turns = values.map((value, place) => turn(value, values[place + 1] ?? Number.POSITIVE_INFINITY));
  const turnsOfDecade = steps.map((step, index) => turn(step, steps[index + 1] ?? 1000));
  return {
    name,
    steps,
    usualTolerance,
    values,
    turns,
    lastUpTo: byFigure((figure) => Math.max(0, steps.filter((step) => step <= figure).length - 1)),
    nearestTo: byFigure((figure) => turnsOfDecade.filter((turn) => turn < figure).length),
  };
}

const byFigure = (of: (figure: number) => number) => Uint8Array.from({ length: 1001 }, (_, figure) => of(figure));

/** Where in `values` the value stands by one of the two indexes of figures; rounding may put it one off. */
function placeBy(index: Uint8Array, value: number, series: Series): number {
  if (!(value >= LEAST && value <= MOST)) {
    throw new PartsError("out-of-range", value, "A value lies above zero, between 1e-15 and 1e15.");
  }
  const decade = Math.floor(Math.log10(value)) | 0;
  const figure = (value * powerOfTen(2 - decade)) | 0;
  return (decade - LOWEST_DECADE) * series.steps.length + index[figure]!;
}

/**
 * Where in a series' `values` the last one stands that is not above the value given.
 *
 * @param value Any positive value from 1e-15 to 1e15, in base units.
 * @throws PartsError "out-of-range" for anything else.
 * @example SERIES.E12.values[placeUpTo(52_000, SERIES.E12)] // 47_000
 */
export function placeUpTo(value: number, series: Series): number {
  let place = placeBy(series.lastUpTo, value, series);
  while (series.values[place]! > value) place--;
  while (series.values[place + 1]! <= value) place++;
  return place;
}

/**
 * Where in a series' `values` the one stands that is nearest by ratio to the value given; in a tie the smaller.
 *
 * @param value As for placeUpTo.
 * @throws PartsError "out-of-range" as placeUpTo does.
 * @example SERIES.E12.values[placeNearest(52_000, SERIES.E12)] // 56_000
 */
export function placeNearest(value: number, series: Series): number {
  let place = placeBy(series.nearestTo, value, series);
  while (value > series.turns[place]!) place++;
  while (value <= series.turns[place - 1]!) place--;
  return place;
}
