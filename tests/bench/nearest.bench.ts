import { nearest, SERIES, SERIES_NAMES, type Series } from "../../src/core/index.js";
import type { Bench } from "./measure.js";

const COUNT = 100_000;

/** Sizes spread evenly by ratio over nine decades; the same in every run. */
const wanted = Float64Array.from({ length: COUNT }, (_, i) => 10 ** (((i * 0.6180339887) % 1) * 9 - 3));
const few = wanted.subarray(0, 2_000);

/** The nearest value by looking at every one of three decades. */
function byScan(size: number, series: Series): number {
  const decade = Math.floor(Math.log10(size));
  let best = 0;
  let bestRatio = Number.POSITIVE_INFINITY;
  for (let up = -1; up <= 1; up++) {
    for (const step of series.steps) {
      const value = Number(`${step}e${decade + up - 2}`);
      const ratio = Math.max(value / size, size / value);
      if (ratio < bestRatio * (1 - 1e-9)) [best, bestRatio] = [value, ratio];
    }
  }
  return best;
}

function sumOf(sizes: Float64Array, find: (size: number, series: Series) => number, series: Series): number {
  let sum = 0;
  for (const size of sizes) sum += find(size, series);
  return sum;
}

/** Refuses to measure what is not equal to looking at every value. */
function mustBeEqual(series: Series): void {
  for (const size of few) {
    if (nearest(size, series) !== byScan(size, series))
      throw new Error(`${series.name}: ${size} differs from the scan`);
  }
}

/** The nearest standard value for every series, beside looking at every value of three decades. */
export const bench: Bench = {
  title: "nearest standard value, checked equal to a scan",
  rows: () =>
    SERIES_NAMES.flatMap((name) => {
      const series = SERIES[name];
      mustBeEqual(series);
      const scan = `${name} by looking at every value`;
      return [
        { what: scan, count: few.length, run: () => sumOf(few, byScan, series) },
        {
          what: name,
          count: COUNT,
          run: () => sumOf(wanted, nearest, series),
          comparedWith: scan,
          goal: { rate: 10e6 },
        },
      ];
    }),
};
