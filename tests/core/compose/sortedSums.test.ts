import fc from "fast-check";
import { expect, test } from "vitest";
import { firstFrom, keptSums, reciprocals, sortedPairs, sortedSingles } from "../../../src/core/compose/sortedSums.js";

const numbers = fc
  .array(fc.double({ min: 1e-12, max: 1e9, noNaN: true }), { minLength: 1, maxLength: 30 })
  .map((values) => Float64Array.from(values));
const isSorted = (sums: Float64Array) => sums.every((sum, i) => i === 0 || sums[i - 1]! <= sum);

test("pairs are all sums of two, in order, each with its terms", () => {
  fc.assert(
    fc.property(numbers, (numbers) => {
      const { sums, first, second } = sortedPairs(numbers);
      expect(sums).toHaveLength((numbers.length * (numbers.length + 1)) / 2);
      expect(isSorted(sums)).toBe(true);
      expect([...sums]).toEqual([...first].map((a, i) => numbers[a]! + numbers[second[i]!]!));
    }),
  );
});

test("the first sum from a limit on is found as a search from the start finds it", () => {
  fc.assert(
    fc.property(numbers, fc.double({ min: 1e-13, max: 1e10, noNaN: true }), (numbers, low) => {
      const pairs = sortedPairs(numbers);
      const place = pairs.sums.findIndex((sum) => sum >= low);
      expect(firstFrom(pairs, low)).toBe(place < 0 ? pairs.sums.length : place);
    }),
  );
});

test("equal numbers and limits below nothing or beyond everything do no harm", () => {
  const pairs = sortedPairs(Float64Array.of(10, 10, 10));
  expect(firstFrom(pairs, -1)).toBe(0);
  expect(firstFrom(pairs, Number.POSITIVE_INFINITY)).toBe(6);
  expect(sortedPairs(new Float64Array(0)).sums).toHaveLength(0);
});

test("what is kept and what is turned over stays sorted and keeps its terms", () => {
  const singles = sortedSingles(Float64Array.of(4, 1, 2));
  expect([...reciprocals(singles).sums]).toEqual([0.25, 0.5, 1]);
  expect([...reciprocals(singles).first]).toEqual([0, 2, 1]);
  expect([...keptSums(singles, (at) => at !== 1).sums]).toEqual([1, 4]);
});
