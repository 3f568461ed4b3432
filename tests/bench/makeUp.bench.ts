import { makeUp, SERIES, stepsBetween, stockOf, type Wants } from "../../src/core/index.js";
import { nearestOfEveryFour } from "./everyNetwork.js";
import type { Bench } from "./measure.js";

const E24 = stockOf(stepsBetween(10, 9.1e6, SERIES.E24));
const E96 = stockOf(stepsBetween(10, 9.76e6, SERIES.E96));
const FEW = stepsBetween(100, 9100, SERIES.E12);
const TEN = { minus: 0.1, plus: 0.1 };

/** Targets that no network meets exactly, spread over the middle decades; the same in every run. */
const targets = Array.from({ length: 20 }, (_, i) => Math.PI * 10 ** (2 + (i % 4) + i / 40));

type Asked = Partial<Wants> & Pick<Wants, "stock">;

const searched = (wanted: number, asked: Asked, within = 0.01) =>
  makeUp({
    ...{ kind: "resistor", wanted, first: "nearest", ...asked },
    window: { min: wanted * (1 - within), max: wanted * (1 + within) },
  }).found;

/** One search after another, each for another target. */
function searching(asked: Asked): () => unknown {
  let at = 0;
  return () => searched(targets[at++ % targets.length]!, asked);
}

/** The same where nothing is to be found; refuses to measure anything else. */
function findingNone(asked: Asked, within: number): () => unknown {
  let at = 0;
  return () => {
    const wanted = targets[at++ % targets.length]!;
    if (searched(wanted, asked, within).length > 0) throw new Error(`${wanted} is found where nothing should be.`);
  };
}

/** Targets within reach of four of the few values, from 100 to 24,000, and how near each comes. */
const near = Array.from({ length: 20 }, (_, i) => Math.PI * 10 ** (1.5 + i / 8));
const few = stockOf(FEW);
const bySearch = () => near.map((wanted) => Math.abs(Math.log(1 + searched(wanted, { stock: few })[0]!.off)));
const byTryingAll = () => near.map((wanted) => nearestOfEveryFour(FEW, wanted));

/** Refuses to measure what is not equal to trying everything. */
function mustBeEqual(): void {
  const all = byTryingAll();
  for (const [i, off] of bySearch().entries()) {
    if (Math.abs(off - all[i]!) > 1e-9) throw new Error(`${near[i]}: ${off} differs from ${all[i]} by trying all`);
  }
}

/** What it costs to make a value up, exactly, and what trying everything costs where that can be waited for. */
export const bench: Bench = {
  title: "making a value up from stock; of 24 values checked equal to trying everything",
  rows: () => {
    mustBeEqual();
    const all = "20 values from 4 of 24, by trying everything";
    const tight = E96.map((part) => ({ ...part, watts: 0.499 }));
    const wide = E96.map((part) => ({ ...part, watts: 0.5, tolerance: TEN }));
    return [
      { what: all, count: 20, run: byTryingAll },
      { what: "the same by search", count: 20, run: bySearch, comparedWith: all, goal: { ratio: 200 } },
      { what: "2 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24, mostParts: 2 }) },
      { what: "3 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24, mostParts: 3 }) },
      { what: "4 parts, E24 x 6 decades", count: 1, run: searching({ stock: E24 }) },
      { what: "4 parts, E96 x 6 decades", count: 1, run: searching({ stock: E96 }), goal: { p95: 0.06 } },
      { what: "... the five best", count: 1, run: searching({ stock: E96, list: 5 }) },
      {
        what: "... of 0.5 W parts for 1.2 W",
        count: 1,
        run: searching({ stock: E96.map((part) => ({ ...part, watts: 0.5 })), watts: 1.2 }),
      },
      {
        what: "... that barely bear 2 W: none near enough",
        count: 1,
        run: findingNone({ stock: tight, watts: 1.99 }, 1e-6),
        goal: { p95: 0.3 },
      },
      {
        what: "... whose tolerances no rating allows: broken off",
        count: 1,
        run: findingNone({ stock: wide, watts: 1.75 }, 0.2),
        goal: { p95: 0.3 },
      },
    ];
  },
};
