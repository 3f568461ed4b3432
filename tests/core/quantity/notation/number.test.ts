import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { scanNumber } from "../../../../src/core/quantity/notation/number.js";

describe("numbers in a text", () => {
  test.each([
    // text, mark, value, end, why
    ["470,000 ohms", "point", 470_000, 7, "a comma before three digits groups thousands"],
    ["0,047", "point", 0.047, 5, "behind a lone nought it is the mark"],
    ["4,7nF", "point", 4.7, 3, "nor does one digit make a group"],
    ["1.500,5", "comma", 1500.5, 7, "German thousands"],
    [".05 mfd", "point", 0.05, 3, "no nought before the point"],
    ["1½ meg", "point", 1.5, 2, "a whole number and a written fraction"],
    ["12.", "point", 12, 2, "a full stop is no point"],
    ["8/16", "point", 8, 1, "two capacitances, no half"],
  ] as const)("%s (%s) says %d: %s", (text, mark, value, end, _why) => {
    expect(scanNumber(text, 0, mark)).toMatchObject({ value, end });
  });

  test("a number of any length is the one the language itself reads", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[1-9]\d{0,24}$/), fc.stringMatching(/^\d{0,24}$/), (whole, decimals) => {
        const text = decimals === "" ? whole : `${whole}.${decimals}`;
        expect(scanNumber(text, 0)!.value).toBe(Number(text));
      }),
    );
  });
});
