import { makeUp, SERIES, stepsBetween, stockOf, type Wants } from "../../src/core/index.js";
import { nearestOfEveryFour } from "./everyNetwork.js";
import type { Bench } from "./measure.js";

const E24 = stockOf(stepsBetween(10, 9.1e6, SERIES.E24));
const E96 = stockOf(stepsBetween(10, 9.76e6, SERIES.E96));
const TEN = { minus: 0.1, plus: 0.1 };
const FEW = stepsBetween(100, 9100, SERIES.E12);

/** Targets that no network meets exactly, spread over the middle decades; the same in every run. */
const targets = Array.from({ length: 20 }, (_, i) => Math.PI * 10 ** (2 + (i % 4) + i / 40));

/** One search after another, each for another target. */
function searching(wants: Partial<Wants> & Pick<Wants, "stock">): () => unknown {
  let at = 0;
  return () => {
    const wanted = targets[at++ % targets.length]!;
    return makeUp({ kind: "resistor", wanted, window: within(wanted, 0.01), first: "nearest", ...wants });
  };
}

/** The same where nothing is to be found; refuses to measure anything else. */
function findingNone(wants: Partial<Wants> & Pick<Wants, "stock">, ratio = 1e-6): () => unknown {
  let at = 0;
  return () => {
    const wanted = targets[at++ % targets.length]!;
    const { found } = makeUp({ kind: "resistor", wanted, window: within(wanted, ratio), ...wants });
    if (found.length > 0) throw new Error(`A network for ${wanted} was found where none should be.`);
  };
}

const within = (wanted: number, ratio: number) => ({ min: wanted * (1 - ratio), max: wanted * (1 + ratio) });

/** What it costs to make a value up, exactly, and what trying everything costs where that can be waited for. */
export const bench: Bench = {
  title: "making a value up from stock",
  rows: () => [
    { what: "4 of 24 values by trying everything", count: 1, run: () => nearestOfEveryFour(FEW, targets[0]!) },
    {
      what: "4 of 24 values (goal: 200 times faster)",
      count: 1,
      run: searching({ stock: stockOf(FEW) }),
      comparedWith: "4 of 24 values by trying everything",
    },
    { what: "2 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24, mostParts: 2 }) },
    { what: "3 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24, mostParts: 3 }) },
    { what: "4 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24 }) },
    { what: "4 parts, E96 x 6 decades (goal: p95 60 ms)", count: 1, run: searching({ stock: E96 }) },
    { what: "... the five best", count: 1, run: searching({ stock: E96, list: 5 }) },
    {
      what: "... of 0.5 W parts for 1.2 W",
      count: 1,
      run: searching({ stock: E96.map((part) => ({ ...part, watts: 0.5 })), watts: 1.2 }),
    },
    {
      what: "... that barely bear 2 W, none near enough (goal: 300 ms)",
      count: 1,
      run: findingNone({ stock: E96.map((part) => ({ ...part, watts: 0.499 })), watts: 1.99 }),
    },
    {
      what: "... with tolerances that no network bears, broken off (goal: 300 ms)",
      count: 1,
      run: findingNone({ stock: E96.map((part) => ({ ...part, watts: 0.5, tolerance: TEN })), watts: 1.75 }, 0.2),
    },
  ],
};
