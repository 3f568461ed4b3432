import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { faultsOf, firstPlans, leaningPlans } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";
import { BASKET_RULES, randomBasket } from "./randomBasket.js";

describe("lines that each move at a small loss may be worth one parcel", () => {
  test("two lines at 5 cents more reach free shipping: 10.10 + 1.00 + 1.00, where one vendor's goods alone ask for 2.10 of waste", () => {
    const basket = basketOf(
      [vendorOf("A", { shipping: 6, freeFrom: 10 }), vendorOf("B", { shipping: 1 })],
      [
        ...["1", "2", "3"].map((n) => offerOf(`A-${n}`, n === "1" ? 8 : 1.05)),
        ...["2", "3", "4"].map((n) => offerOf(`B-${n}`, 1)),
      ],
      [
        lineOf("R1", 1, ["A-1"]),
        lineOf("R2", 1, ["A-2", "B-2"]),
        lineOf("R3", 1, ["A-3", "B-3"]),
        lineOf("R4", 1, ["B-4"]),
      ],
    );
    const first = [...firstPlans(basket)].at(-1)!;
    // 8.00 and two more of A-2 nobody wants, 3 x 1.00 and a parcel from B
    expect(first.cost).toBeCloseTo(14.1, 9);
    expect([...leaningPlans(basket, first)].at(-1)!.cost).toBeCloseTo(12.1, 9);
  });

  test("a vendor that no line can be drawn to is left as it is", () => {
    const basket = basketOf([vendorOf("A", { freeFrom: 100 })], [offerOf("A-1", 1)], [lineOf("R1", 1, ["A-1"])]);
    const first = [...firstPlans(basket)].at(-1)!;
    for (const plan of leaningPlans(basket, first)) expect(plan).toBe(first);
  });

  test("whatever the rules, such plans are sound, and each is at least as cheap as the one before", () => {
    fc.assert(
      fc.property(randomBasket(BASKET_RULES), (basket) => {
        const first = [...firstPlans(basket)].at(-1);
        if (!first) return;
        let cost = first.cost;
        for (const plan of leaningPlans(basket, first)) {
          expect(faultsOf(basket, plan)).toEqual([]);
          expect(plan.cost).toBeLessThanOrEqual(cost);
          cost = plan.cost;
        }
      }),
      { numRuns: 200 },
    );
  });
});
