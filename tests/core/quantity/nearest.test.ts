import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  NEAREST_RULES,
  type NearestRule,
  nearest,
  neighbours,
  SERIES,
  SERIES_NAMES,
  type Series,
} from "../../../src/core/index.js";

const positive = fc.double({ min: 1e-14, max: 1e14, noNaN: true });
const anySeries = fc.constantFrom(...SERIES_NAMES).map((name) => SERIES[name]);

/** All values of a series over the decades around a value, by the plainest means. */
const around = (value: number, series: Series) => {
  const decade = Math.floor(Math.log10(value));
  return [-1, 0, 1].flatMap((up) => series.steps.map((step) => Number(`${step}e${decade + up - 2}`)));
};

/** The nearest value by looking at every one. */
function byLooking(wanted: number, series: Series, rule: NearestRule): number {
  const distance: Record<NearestRule, (value: number) => number> = {
    ratio: (value) => Math.max(value / wanted, wanted / value),
    difference: (value) => Math.abs(value - wanted),
    "not below": (value) => (value < wanted ? Number.POSITIVE_INFINITY : value - wanted),
    "not above": (value) => (value > wanted ? Number.POSITIVE_INFINITY : wanted - value),
  };
  return around(wanted, series).reduce((best, value) =>
    distance[rule](value) < distance[rule](best) * (1 - 1e-9) ? value : best,
  );
}

describe("the nearest preferred value", () => {
  test.each([
    // wanted, found, why
    [52_000, 56_000, "by ratio, 56k beats 47k"],
    [95, 100, "the next decade counts"],
    [47_000, 47_000, "a value of the series is its own nearest"],
    [4.7e-8, 4.7e-8, "small values are exact, not a hair beside"],
    [300_000, 330_000, "by ratio 330k is 10 % off and 270k is 11 %"],
  ])("%d becomes %d: %s", (wanted, found) => expect(nearest(wanted, SERIES.E12)).toBe(found));

  test.each<[NearestRule, number, string]>([
    // rule, found, why
    ["ratio", 330_000, "10 % against 11 %"],
    ["difference", 270_000, "a tie, and the smaller value wins"],
    ["not below", 330_000, "the first one that is large enough"],
    ["not above", 270_000, "the last one that is small enough"],
  ])("300k by %s becomes %d: %s", (rule, found) => expect(nearest(300_000, SERIES.E12, rule)).toBe(found));

  test.each([20e-6, 0.02e-6, 2e6, 20])("a tie is a tie in any unit: %d stands between 18 and 22", (wanted) => {
    expect(nearest(wanted, SERIES.E12, "difference") / wanted).toBeCloseTo(0.9, 12);
  });

  test("a tie by ratio goes to the smaller value too: 2 lies between 1.6 and 2.5 of R5", () => {
    expect(nearest(2, SERIES.R5)).toBe(1.6);
    expect(nearest(2e-6, SERIES.R5)).toBe(1.6e-6);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY, 1e-16, 1e16])(
    "%d is refused, with what would work",
    (value) => {
      expect(() => nearest(value, SERIES.E12)).toThrow("A value lies above zero");
    },
  );

  test.each(NEAREST_RULES)("by %s it is what looking at every value finds", (rule) => {
    fc.assert(
      fc.property(positive, anySeries, (wanted, series) => {
        expect(nearest(wanted, series, rule)).toBe(byLooking(wanted, series, rule));
      }),
      { numRuns: 5_000 },
    );
  });

  test("every value of every series is its own nearest over thirty decades", () => {
    for (const name of SERIES_NAMES) {
      for (let decade = -15; decade < 15; decade++) {
        for (const step of SERIES[name].steps) {
          const value = Number(`${step}e${decade - 2}`);
          if (value >= 1e-15) expect(nearest(value, SERIES[name])).toBe(value);
        }
      }
    }
  });

  test("a larger wish never gets a smaller value", () => {
    fc.assert(
      fc.property(positive, positive, anySeries, fc.constantFrom(...NEAREST_RULES), (a, b, series, rule) => {
        expect(nearest(Math.min(a, b), series, rule)).toBeLessThanOrEqual(nearest(Math.max(a, b), series, rule));
      }),
    );
  });

  test("the neighbours stand on both sides, and meet on a value of the series", () => {
    expect(neighbours(52_000, SERIES.E12)).toEqual({ below: 47_000, above: 56_000 });
    expect(neighbours(56_000, SERIES.E12)).toEqual({ below: 56_000, above: 56_000 });
  });
});
