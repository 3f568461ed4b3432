import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { VERDICT_RULES, type VerdictRule, verdict } from "../../../src/core/index.js";

const window = { min: 9_000, max: 11_000 };

describe("the verdict on a lifted part of 10 k, 10 %, read to 100 ohms", () => {
  test.each<[number, string, string, string, string]>([
    // reading, four-way, simple, strict, why
    [10_000, "good", "good", "good", "in the middle"],
    [10_900, "good", "good", "good", "just clear of the guard band"],
    [10_950, "likely good", "good", "bad", "inside, but by less than the meter is sure of"],
    [11_000, "likely good", "good", "bad", "the limit belongs to the window"],
    [11_050, "likely bad", "bad", "bad", "outside by less than the meter is sure of"],
    [11_100, "likely bad", "bad", "bad", "the edge of the guard band"],
    [11_150, "bad", "bad", "bad", "outside for certain"],
    [8_950, "likely bad", "bad", "bad", "the lower limit is guarded as well"],
    [8_000, "bad", "bad", "bad", "far below"],
  ])("%d reads %s four-way, %s simple, %s strict: %s", (reading, fourWay, simple, strict) => {
    const read = { reading, uncertainty: 100, window };
    expect(verdict(read, "four-way")).toBe(fourWay);
    expect(verdict(read, "simple")).toBe(simple);
    expect(verdict(read, "strict")).toBe(strict);
  });

  test("a meter that knows nothing of the second digit finds nothing good", () => {
    expect(verdict({ reading: 10_000, uncertainty: 1_500, window })).toBe("likely good");
  });

  test("a negative uncertainty is refused", () => {
    expect(() => verdict({ reading: 1, uncertainty: -1, window })).toThrow("zero or more");
  });

  test("without uncertainty all three agree", () => {
    const rules = fc.constantFrom<VerdictRule>(...VERDICT_RULES);
    fc.assert(
      fc.property(fc.integer({ min: 8_000, max: 12_000 }), rules, (reading, rule) => {
        const exact = { reading, uncertainty: 0, window };
        expect(verdict(exact, rule)).toBe(verdict(exact, "simple"));
      }),
    );
  });

  test("a better meter never turns good into bad or bad into good", () => {
    const reading = fc.integer({ min: 7_000, max: 13_000 });
    const uncertainty = fc.integer({ min: 0, max: 3_000 });
    fc.assert(
      fc.property(reading, uncertainty, uncertainty, (each, a, b) => {
        const coarse = verdict({ reading: each, uncertainty: Math.max(a, b), window });
        const fine = verdict({ reading: each, uncertainty: Math.min(a, b), window });
        if (coarse === "good") expect(fine).toBe("good");
        if (coarse === "bad") expect(fine).toBe("bad");
      }),
    );
  });
});
