import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Basket, faultsOf, firstPlans } from "../../../src/core/index.js";
import { leastCostByTrying } from "./bruteForce.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";
import { BASKET_RULES, randomBasket } from "./randomBasket.js";

const firstOf = (basket: Basket) => [...firstPlans(basket)].at(-1);

describe("a first plan at once", () => {
  test("one parcel beats two: 3 x 0.50 + 2 x 0.60 + 4.00 is less than 3 x 0.50 + 2 x 0.10 + 8.00", () => {
    const basket = basketOf(
      [vendorOf("A"), vendorOf("B")],
      [offerOf("A-1", 0.5), offerOf("A-2", 0.6), offerOf("B-2", 0.1)],
      [lineOf("R1", 3, ["A-1"]), lineOf("R2", 2, ["A-2", "B-2"])],
    );
    expect(firstOf(basket)).toMatchObject({ cost: 6.7, bound: 6.7 });
  });

  test("goods are added where free shipping pays for them: one more at 2.00 saves 4.00", () => {
    const basket = basketOf([vendorOf("A", { freeFrom: 10 })], [offerOf("A-1", 2)], [lineOf("R1", 4, ["A-1"])]);
    expect(firstOf(basket)).toMatchObject({ cost: 10, orders: [{ offer: "A-1", units: 5 }] });
  });

  test("an order that would be refused is filled up", () => {
    const basket = basketOf([vendorOf("A", { minimumOrder: 5 })], [offerOf("A-1", 2)], [lineOf("R1", 1, ["A-1"])]);
    expect(firstOf(basket)).toMatchObject({ cost: 10, orders: [{ offer: "A-1", units: 3 }] });
  });

  test("more vendors than can all be combined: they are left out one by one", () => {
    const names = Array.from({ length: 15 }, (_, i) => `V${i}`);
    const basket = basketOf(
      names.map((name) => vendorOf(name)),
      names.map((name, i) => offerOf(`${name}-1`, 1 + i / 100)),
      [
        lineOf(
          "R1",
          3,
          names.map((name) => `${name}-1`),
        ),
        lineOf("R2", 1, ["V3-1", "V5-1"]),
      ],
    );
    expect(firstOf(basket)?.cost).toBeCloseTo(4 * 1.03 + 4, 9);
  });

  test("whatever the rules, it is sound, never below the best, and its bound never above", () => {
    fc.assert(
      fc.property(randomBasket(BASKET_RULES), (basket) => {
        const plan = firstOf(basket);
        if (!plan) return;
        const best = leastCostByTrying(basket);
        expect(faultsOf(basket, plan)).toEqual([]);
        expect(plan.cost).toBeGreaterThanOrEqual(best - 1e-6);
        expect(plan.bound).toBeLessThanOrEqual(best + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});
