import { firstPlans, modelOf, startOf } from "../../src/core/index.js";
import { solve } from "../../src/solver/solve.js";
import type { Bench } from "./measure.js";
import { seasonOf } from "./season.js";

const firstOf = (basket: ReturnType<typeof seasonOf>) => [...firstPlans(basket)].at(-1)!;

const solved = (basket: ReturnType<typeof seasonOf>) => {
  const model = modelOf(basket);
  return solve(model.milp, { seconds: 30, start: startOf(basket, model, firstOf(basket)) });
};

const row = (lines: number, vendors: number, thresholds: boolean) => {
  const basket = seasonOf({ lines, vendors, thresholds });
  const what = `${lines} x ${vendors}${thresholds ? " with thresholds" : ""}`;
  return [
    { what: `${what}: proven by the solver`, count: lines, run: () => solved(basket) },
    {
      what: `${what}: first plan`,
      count: lines,
      run: () => firstOf(basket),
      comparedWith: `${what}: proven by the solver`,
    },
  ];
};

/** How long a basket takes: the first plan of vendor sets, and the proof; invented seasons, the same in every run. */
export const bench: Bench = {
  title: "basket",
  rows: () => [...row(100, 4, true), ...row(300, 6, true), ...row(1000, 10, false)],
};
