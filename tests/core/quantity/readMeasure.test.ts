import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readMeasure } from "../../../src/core/quantity/readMeasure.js";

describe("a rating as people write it", () => {
  test.each([
    ["1/2 W", "watt", 0.5, "half-watt parts are printed so"],
    ["½", "watt", 0.5, "or so"],
    ["250 mW", "watt", 0.25, "a prefix"],
    ["400V", "volt", 400, "no space"],
    ["1.6 kV", "volt", 1600, "kilovolts"],
    ["450 WVDC", "volt", 450, "working volts"],
    ["50 ma", "ampere", 0.05, "old writing of milliamperes"],
    ["10 %", "ratio", 0.1, "a ratio in percent"],
    ["-6.3", "volt", -6.3, "a negative bias"],
    ["19 mm", "metre", 0.019, "millimetres, not micromicrofarads"],
    ["3/8 in", "metre", 0.009525, "a body's diameter: 0.375 x 25.4 mm"],
  ] as const)("%s in %s is %d: %s", (...[text, measure, found]) => expect(readMeasure(text, measure)).toBe(found));

  test.each([
    ["400 W", "volt", "watts are no volts"],
    ["abc", "watt", "no number"],
    ["1 2", "watt", "two numbers"],
    ["", "volt", "nothing"],
    [".01", "farad", "a capacitor that says no unit means microfarads"],
    ["20", "farad", "or so"],
  ] as const)("%s in %s is refused: %s", (...[text, measure]) => {
    expect(() => readMeasure(text, measure)).toThrow("Write it like");
  });
});

test("a number is the same with or without its unit, and a prefix counts what it says", () => {
  const number = fc.integer({ min: 1, max: 99_999 }).map((figures) => figures / 100);
  fc.assert(
    fc.property(number, (number) => {
      expect(readMeasure(`${number} V`, "volt")).toBe(readMeasure(String(number), "volt"));
      expect(readMeasure(`${number} kV`, "volt") / number).toBeCloseTo(1000, 9);
      expect(readMeasure(`${number} mA`, "ampere") / number).toBeCloseTo(0.001, 12);
      expect(readMeasure(`${number} mm`, "metre") / number).toBeCloseTo(0.001, 12);
    }),
  );
});
