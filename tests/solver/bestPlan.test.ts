import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Basket, faultsOf, type Infeasible, type Plan } from "../../src/core/index.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { leastCostByTrying } from "../core/order/bruteForce.js";
import { BASKET_RULES, type BasketRule, randomBasket } from "../core/order/randomBasket.js";

const costOf = (found: Plan | Infeasible) => ("infeasible" in found ? Number.POSITIVE_INFINITY : found.cost);

async function expectBest(basket: Basket): Promise<void> {
  const found = await bestPlan(basket, { seconds: 20 });
  expect(costOf(found)).toBeCloseTo(leastCostByTrying(basket), 2);
  if ("infeasible" in found) {
    expect(found.because.length).toBeGreaterThan(0);
    return;
  }
  expect(faultsOf(basket, found)).toEqual([]);
  expect(found.cost - found.bound).toBeLessThan(0.005);
}

const everyRule: readonly BasketRule[] = BASKET_RULES.filter((rule) => rule !== "an excluded vendor");

describe("the plan is the best there is, found by trying everything", () => {
  test.each(BASKET_RULES)("with %s", (rule) =>
    fc.assert(fc.asyncProperty(randomBasket([rule]), expectBest), { numRuns: 12 }),
  );

  test("with every rule but a cap of one vendor and an excluded one", () =>
    fc.assert(fc.asyncProperty(randomBasket(everyRule.filter((rule) => rule !== "a cap on vendors")), expectBest), {
      numRuns: 40,
    }));

  test("with every rule", () => fc.assert(fc.asyncProperty(randomBasket(BASKET_RULES), expectBest), { numRuns: 15 }));
});

describe("laws of ordering", () => {
  const rules = everyRule.filter((rule) => rule !== "a cap on vendors");

  test("one more offer never makes a basket dearer", () =>
    fc.assert(
      fc.asyncProperty(randomBasket(rules), async (basket) => {
        const fewer = { ...basket, offers: basket.offers.slice(1) };
        const [more, less] = [await bestPlan(basket, { seconds: 20 }), await bestPlan(fewer, { seconds: 20 })];
        expect(costOf(more)).toBeLessThanOrEqual(costOf(less) + 0.005);
      }),
      { numRuns: 20 },
    ));

  test("twice the money in every price and term is twice the cost", () =>
    fc.assert(
      fc.asyncProperty(randomBasket(rules), async (basket) => {
        const twice = (money: number | null) => (money === null ? null : money * 2);
        const dearer: Basket = {
          ...basket,
          vendors: basket.vendors.map((vendor) => ({
            ...vendor,
            shipping: vendor.shipping * 2,
            freeFrom: twice(vendor.freeFrom),
            minimumOrder: twice(vendor.minimumOrder),
            smallOrderFee: twice(vendor.smallOrderFee),
          })),
          offers: basket.offers.map((offer) => ({ ...offer, breaks: offer.breaks.map(([from, p]) => [from, p * 2]) })),
        };
        const [once, doubled] = [await bestPlan(basket, { seconds: 20 }), await bestPlan(dearer, { seconds: 20 })];
        expect(costOf(doubled) / 2).toBeCloseTo(costOf(once), 2);
      }),
      { numRuns: 15 },
    ));
});
