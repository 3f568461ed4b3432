import { describe, expect, test } from "vitest";
import { alternativesTo, type Basket, firstPlans } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";

const basket = basketOf(
  [vendorOf("A"), vendorOf("B"), vendorOf("C")],
  [offerOf("A-1", 0.5), offerOf("A-2", 0.6), offerOf("B-1", 0.6), offerOf("B-2", 0.1), offerOf("C-1", 0.1)],
  [lineOf("R1", 3, ["A-1", "B-1"]), lineOf("R2", 2, ["A-2", "B-2", "C-1"])],
);
const planOf = (problem: Basket) => [...firstPlans(problem)].at(-1)!;

describe("what the plan is worth", () => {
  test("beside it: each line where its goods are cheapest, and all from one vendor", () => {
    expect(planOf(basket).cost).toBeCloseTo(3 * 0.6 + 2 * 0.1 + 4, 9);
    expect(alternativesTo(basket).map(({ what, cost }) => [what, cost && Number(cost.toFixed(2))])).toEqual([
      ["each line where it is cheapest", 3 * 0.5 + 2 * 0.1 + 8],
      ["all from A", 3 * 0.5 + 2 * 0.6 + 4],
      ["all from B", 6],
      ["all from C", null],
    ]);
  });
});
