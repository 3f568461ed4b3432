import { expect, test } from "vitest";
import { stockOf } from "../../../src/core/compose/stock.js";
import { areToBeHad, priceOf, supplyOf } from "../../../src/core/compose/supply.js";

const parts = [...stockOf([100], { price: 0.1, pieces: 1 }), ...stockOf([220], { price: 0.2 }), ...stockOf([330])];
const wants = { kind: "resistor", wanted: 300, window: { min: 290, max: 310 }, stock: parts } as const;

test.each<[number[], number | null, boolean, string]>([
  [[0, 1], 0.3, true, "one of each, for just what may be spent"],
  [[0, 1], 0.29, false, "a cent too much"],
  [[0, 0], 1, false, "there is only one of the first"],
  [[1, 1, 1, 1], 1, true, "as many as you like of the second"],
  [[2], 1, false, "a price that is not known may be above any"],
  [[2], null, true, "prices do not matter"],
])("parts %j for %s: %s (%s)", (places, mostPrice, had) => {
  expect(areToBeHad(supplyOf(parts, { ...wants, mostPrice }), places)).toBe(had);
});

test("a price is that of all pieces, and unknown where one is", () => {
  const supply = supplyOf(parts, wants);
  expect(priceOf(supply, [0, 1, 1])).toBeCloseTo(0.5, 12);
  expect(priceOf(supply, [0, 2])).toBe(Number.POSITIVE_INFINITY);
});
