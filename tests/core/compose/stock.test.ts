import { expect, test } from "vitest";
import { alikeOf, numbersOf, stockOf } from "../../../src/core/compose/stock.js";

test("parts that differ in their pieces only are alike, and stand for the first of them", () => {
  const parts = [
    ...stockOf([100], { watts: 0.5, tolerance: { minus: 0.05, plus: 0.05 } }),
    ...stockOf([100], { watts: 1 }),
    ...stockOf([100], { watts: 0.5, tolerance: { minus: 0.05, plus: 0.05 }, pieces: 2 }),
    ...stockOf([220], { watts: 0.5 }),
  ];
  expect([...alikeOf(parts)]).toEqual([0, 1, 0, 3]);
  expect([...numbersOf(parts, ({ value }) => value)]).toEqual([100, 100, 100, 220]);
});
