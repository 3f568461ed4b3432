import fc from "fast-check";
import { expect, test } from "vitest";
import { SERIES, SERIES_NAMES, stepsBetween } from "../../../src/core/index.js";

test.each([
  // from, to, found, why
  [1, 10, [1, 2.2, 4.7, 10], "both ends count"],
  [2, 30, [2.2, 4.7, 10, 22], "ends that are no values of the series are left out"],
  [4.6e-8, 1.1e-7, [4.7e-8, 1e-7], "small values are exact"],
  [23, 46, [], "there may be none"],
  [47, 47, [47], "one value alone"],
])("E3 from %d to %d is %j: %s", (from, to, found) => expect(stepsBetween(from, to, SERIES.E3)).toEqual(found));

test("E96 over six decades are 576 values and the last end", () => {
  expect(stepsBetween(1, 1e6, SERIES.E96)).toHaveLength(6 * 96 + 1);
});

test("the wrong way round is said", () => {
  expect(() => stepsBetween(10, 1, SERIES.E3)).toThrow("Give the smaller value first.");
});

test("two spans that meet hold what the whole span holds, and ten times the ends are ten times the values", () => {
  const end = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...SERIES_NAMES), end, end, end, (name, ...ends) => {
      const [a, b, c] = ends.sort((x, y) => x - y) as [number, number, number];
      const found = (from: number, to: number) => stepsBetween(from, to, SERIES[name]);
      const both = [...found(a, b), ...found(b, c)];
      expect([...new Set(both)]).toEqual(found(a, c));
      const tenfold = found(a * 10, c * 10).map((value) => Number((value / 10).toPrecision(6)));
      expect(Math.abs(tenfold.length - found(a, c).length)).toBeLessThanOrEqual(1);
      expect(found(a, c).filter((value) => value > a * 1.001 && value < c * 0.999 && !tenfold.includes(value))).toEqual(
        [],
      );
    }),
  );
});
