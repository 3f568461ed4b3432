import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTolerance, toleranceOfLetter, writeTolerance } from "../../../src/core/index.js";

const even = (ratio: number) => ({ minus: ratio, plus: ratio });
const expectTolerance = (found: { minus: number; plus: number }, wanted: { minus: number; plus: number }) => {
  expect(found.minus).toBeCloseTo(wanted.minus, 9);
  expect(found.plus).toBeCloseTo(wanted.plus, 9);
};

describe("reading a tolerance", () => {
  test.each([
    ["±10 %", even(0.1)],
    ["+/-10%", even(0.1)],
    ["+-5%", even(0.05)],
    ["10%", even(0.1)],
    ["20 percent", even(0.2)],
    ["±5", even(0.05)],
    ["1/2 %", even(0.005)],
    ["½%", even(0.005)],
    ["2½ %", even(0.025)],
    ["2,5 %", even(0.025)],
    ["-20/+80 %", { minus: 0.2, plus: 0.8 }],
    ["+80/-20%", { minus: 0.2, plus: 0.8 }],
    ["+80-20%", { minus: 0.2, plus: 0.8 }],
    ["-10% +50%", { minus: 0.1, plus: 0.5 }],
    ["−20 +80 %", { minus: 0.2, plus: 0.8 }],
    ["+100/-0", { minus: 0, plus: 1 }],
    ["GMV", { minus: 0, plus: 1 }],
    ["gold", even(0.05)],
    ["Silver", even(0.1)],
    ["none", even(0.2)],
    ["K", even(0.1)],
  ])("%s is %j", (text, wanted) => expectTolerance(readTolerance(text), wanted));

  test("an amount is a share of the nominal value", () => {
    expectTolerance(readTolerance("±0.5 pF", { nominal: 10e-12 }), even(0.05));
    expectTolerance(readTolerance("+/-2 ohms", { nominal: 100 }), even(0.02));
  });

  test("the letter D is half a picofarad on 5 pF and half a percent on 100 pF", () => {
    expectTolerance(readTolerance("D", { nominal: 5e-12, farads: true }), even(0.1));
    expectTolerance(readTolerance("D", { nominal: 100e-12, farads: true }), even(0.005));
  });

  test.each(["", "10", "often", "+10/+20 %", "±0.5 pF", "-120/+10%"])(
    '"%s" is refused, with what would work',
    (text) => {
      expect(() => readTolerance(text)).toThrow("Write it like 10 %");
    },
  );

  test("a letter that the system lacks is refused with those it has", () => {
    expect(() => toleranceOfLetter("X")).toThrow("Tolerance letters of IEC are");
  });

  test("the same letter means different things in different systems", () => {
    expect(toleranceOfLetter("L", "IEC")).toEqual(even(0.0001));
    expect(toleranceOfLetter("L", "EIA")).toEqual(even(0.15));
    expect(toleranceOfLetter("N", "ERIE")).toEqual({ minus: 0.2, plus: 0.4 });
  });
});

test.each([
  [even(0.1), "±10 %"],
  [even(0.005), "±0.5 %"],
  [{ minus: 0.2, plus: 0.8 }, "-20/+80 %"],
  [{ minus: 0, plus: 1 }, "-0/+100 %"],
])("%j is written %s", (tolerance, text) => expect(writeTolerance(tolerance)).toBe(text));

test("what is written is read back", () => {
  const ratio = fc.integer({ min: 0, max: 10_000 }).map((steps) => steps / 10_000);
  fc.assert(
    fc.property(ratio, ratio, (minus, plus) =>
      expectTolerance(readTolerance(writeTolerance({ minus, plus })), { minus, plus }),
    ),
  );
});
