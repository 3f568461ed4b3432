import fc from "fast-check";
import { expect, test } from "vitest";
import { close, parallelFarads, parallelPath } from "../../../src/core/index.js";

test("half the ohms in place mean as much again in parallel", () => {
  expect(parallelPath({ lifted: 100_000, inPlace: 50_000 })).toBeCloseTo(100_000, 6);
});

test("the same reading twice means that nothing is in parallel", () => {
  expect(parallelPath({ lifted: 1_000, inPlace: 1_000 })).toBe(Number.POSITIVE_INFINITY);
  expect(parallelFarads({ lifted: 1e-8, inPlace: 1e-8 })).toBe(0);
});

test("a part that reads higher in place, or a capacitor that reads lower, is a reading to take again", () => {
  expect(() => parallelPath({ lifted: 1_000, inPlace: 1_100 })).toThrow("read both again");
  expect(() => parallelFarads({ lifted: 1e-8, inPlace: 9e-9 })).toThrow("read both again");
});

test("putting the path back in parallel gives the reading in place", () => {
  const ohms = fc.double({ min: 1, max: 1e7, noNaN: true });
  fc.assert(
    fc.property(ohms, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (lifted, share) => {
      const path = parallelPath({ lifted, inPlace: lifted * share });
      expect(close(1 / (1 / path + 1 / lifted), lifted * share, 1e-6)).toBe(true);
    }),
  );
});
