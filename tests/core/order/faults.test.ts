import { describe, expect, test } from "vitest";
import { type Basket, faultsOf, type Plan } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";

const basket = basketOf(
  [vendorOf("A", { minimumOrder: 1 }), vendorOf("B")],
  [offerOf("A-1", 0.5, { stock: 5 }), offerOf("B-1", 0.4, { pack: 5 }), offerOf("B-2", 1)],
  [lineOf("R7", 3, ["A-1", "B-1"])],
);
/** Three at 0.50 and 4.00 shipping. */
const good: Plan = {
  cost: 5.5,
  bound: 4.4,
  orders: [{ offer: "A-1", units: 3 }],
  supplies: [{ offer: "A-1", line: "R7", pieces: 3 }],
};
const alike: Basket = { ...basket, lines: [lineOf("R7", 3, ["A-1", "B-1"], true)] };

describe("a plan's faults, each in a sentence", () => {
  test("a sound plan has none", () => expect(faultsOf(basket, good)).toEqual([]));

  test.each<[string, Basket, Partial<Plan>]>([
    ["It costs 5.5, not 5.4.", basket, { cost: 5.4 }],
    ["The bound 6 is above the cost.", basket, { bound: 6 }],
    ["R7 gets 2 of 3 pieces.", basket, { supplies: [{ offer: "A-1", line: "R7", pieces: 2 }] }],
    ["6 units of A-1 can't be bought.", basket, { orders: [{ offer: "A-1", units: 6 }] }],
    ["A-1 gives 4 pieces out of 3.", basket, { supplies: [{ offer: "A-1", line: "R7", pieces: 4 }] }],
    ["B-2 fits no line.", basket, { orders: [...good.orders, { offer: "B-2", units: 1 }] }],
    ["B-2 does not fit R7.", basket, { supplies: [...good.supplies, { offer: "B-2", line: "R7", pieces: 1 }] }],
    ["B-1 gives pieces but is not bought.", basket, { supplies: [{ offer: "B-1", line: "R7", pieces: 3 }] }],
    ["A refuses so small an order.", basket, { orders: [{ offer: "A-1", units: 1 }] }],
    ["A is excluded.", { ...basket, options: { maxVendors: null, excluded: ["A"] } }, {}],
    ["1 vendors where 0 may be.", { ...basket, options: { maxVendors: 0, excluded: [] } }, {}],
    ["C-1 is no offer.", basket, { orders: [...good.orders, { offer: "C-1", units: 1 }] }],
    [
      "R7 must come from one offer.",
      alike,
      {
        supplies: [
          { offer: "A-1", line: "R7", pieces: 2 },
          { offer: "B-1", line: "R7", pieces: 1 },
        ],
      },
    ],
  ])("%s", (fault, problem, differs) => expect(faultsOf(problem, { ...good, ...differs })).toContain(fault));
});
