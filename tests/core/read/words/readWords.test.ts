import { describe, expect, test } from "vitest";
import { readWords } from "../../../../src/core/read/words/readWords.js";

const figures = (text: string) =>
  readWords(text).amounts.map((amount) =>
    amount.figures.map((figure) => [figure.number, figure.unit?.measure ?? null, figure.unit?.factor ?? null]),
  );
const joins = (text: string) => readWords(text).amounts.map((amount) => amount.join);

describe("amounts in the words of a line", () => {
  test.each([
    // text, how the first amount hangs together, its numbers, why
    ["3 - 30 mmf", "range", [3, 30], "a trimmer's range; the unit stands on the second number"],
    ["20 TO 140UF", "range", [20, 140], "a range in words"],
    ["100 TO 10K", "range", [100, 10], "the prefix stands on the second number alone"],
    ["3...30 pF", "range", [3, 30], "a range with dots"],
    [".1 or .25", "or", [0.1, 0.25], "alternatives"],
    ["40-40-20 mfd", "list", [40, 40, 20], "sections of a can"],
    ["2 x 0.5 uf", "list", [2, 0.5], "two sections of a half"],
    ["1 1/2 meg.", "one", [1.5], "a mixed number"],
    ["100-mfd", "one", [100], "a hyphen before the unit"],
    ["50 000 pF", "one", [50_000], "a blank sets the thousands apart"],
    ["8 450 V", "one", [8], "this blank parts a value from its volts"],
    ["Three hundred ohms", "one", [300], "a number in words"],
  ] as const)("%s is a %s of %j: %s", (text, join, numbers, _why) => {
    expect(joins(text)[0]).toBe(join);
    expect(figures(text)[0]!.map(([number]) => number)).toEqual(numbers);
  });

  test("a value and the fraction behind it are two amounts", () => {
    expect(figures("270 1/4W")).toEqual([[[270, null, null]], [[0.25, "watt", 1]]]);
  });

  test("a value and its volts may be parted by a stroke", () => {
    expect(figures(".05/400 paper").map((amount) => amount[0]![0])).toEqual([0.05, 400]);
    expect(figures("1.8k/1W").map((amount) => amount[0]![1])).toEqual([null, "watt"]);
  });

  test.each([
    ["500K, tapped at 150K", "tapped", "a tap is no value"],
    ["450 volts, 525 peak", "525", "a peak is no rating"],
    ["47K, matched within 1", "matched", "a matching limit is no value"],
    ["2.5 mh, 50 ohms d.c.", "50", "the resistance of a coil is no value"],
    ["4 section, 40-40-20-20 mfd", "4", "a count is no value"],
  ])("%s: %s is said aside: %s", (text) => {
    expect(readWords(text).amounts.filter((amount) => amount.aside !== null)).toHaveLength(1);
  });
});

describe("tolerances", () => {
  test.each([
    // text, minus, plus, why
    ["±2 %", 0.02, 0.02, "the sign"],
    ["+-10%", 0.1, 0.1, "typed"],
    ["plus or minus 20%", 0.2, 0.2, "in words"],
    ["2 per cent", 0.02, 0.02, "British"],
    ["+80-20%", 0.2, 0.8, "two sides together"],
    ["+80/-20 %", 0.2, 0.8, "with a stroke"],
    ["-10 +50%", 0.1, 0.5, "minus first"],
    ["+50% -10%", 0.1, 0.5, "percent twice"],
    ["PLUS-MINUS .01%", 0.0001, 0.0001, "in words with a hyphen"],
  ])("%s is -%d/+%d: %s", (text, minus, plus) => {
    const [tolerance] = readWords(text).tolerances;
    expect(tolerance!.minus).toBeCloseTo(minus, 9);
    expect(tolerance!.plus).toBeCloseTo(plus, 9);
  });

  test("an absolute tolerance keeps its unit", () => {
    expect(readWords("5, +-.25 mmf").tolerances[0]).toMatchObject({
      minus: 0.25,
      absolute: true,
      unit: { measure: "farad" },
    });
  });

  test("matched within 1 % is no tolerance", () => {
    expect(readWords("47K, 1 W., matched within 1 %").tolerances).toEqual([]);
  });
});

describe("type designations of the military specifications", () => {
  test.each([
    // text, value, tolerance, watts, why: the published coding, figures worked by hand
    ["RC20BF474K", 470_000, 0.1, 0.5, "MIL-R-11: 47 and four zeros, K 10 %, size 20 half a watt"],
    ["RC42BF682J", 6_800, 0.05, 2, "MIL-R-11: size 42 two watts"],
    ["RC20BF2R2K", 2.2, 0.1, 0.5, "R is the point"],
    ["CM20B101K", 100e-12, 0.1, null, "JAN-C-5: picofarads; the size fixes no volts"],
    ["CC21CH100J", 10e-12, 0.05, null, "JAN-C-20A: 10 and no zero"],
    ["CP53B1EF104K", 0.1e-6, 0.1, null, "JAN-C-25: 10 and four zeros in picofarads"],
  ])("%s", (text, value, tolerance, watts, _why) => {
    const [code] = readWords(text).codes;
    expect(code!.value! / value).toBeCloseTo(1, 9);
    expect(code!.tolerance!.plus).toBe(tolerance);
    expect(code!.watts).toBe(watts);
  });

  test.each(["12AX7", "6BQ7A", "1N4007", "455KC"])("%s is none", (text) => {
    expect(readWords(text).codes).toEqual([]);
  });
});

test("colour names joined by hyphens are a value (IEC 60062:2016)", () => {
  expect(readWords("33K (orange-orange-yellow)").colours).toEqual({ ohms: 330_000, tolerance: null });
  expect(readWords("9.1K (white-brown-red-gold)").colours).toEqual({ ohms: 9_100, tolerance: 0.05 });
});

test("letters that stand for figures are read as figures and marked", () => {
  const [amount] = readWords(".0O5 mf").amounts;
  expect(amount!.figures[0]!.number).toBe(0.005);
  expect(readWords(".0O5 mf").tokens.some((token) => token.repaired)).toBe(true);
});

test("a letter in a fraction is no whole number of watts", () => {
  expect(readWords("l/2 watt").amounts[0]!.figures[0]!.number).toBe(0.5);
});

test("in a poor scan a raised point read as a hyphen is a point, and a range stays a range", () => {
  const noisy = { mark: "point", noisy: true } as const;
  const numbers = (text: string) => readWords(text, noisy).amounts[0]!.figures.map((figure) => figure.number);
  expect(numbers("O-O5 mf.")).toEqual([0.05]);
  expect(numbers("lO,OOO ohms")).toEqual([10_000]);
  expect(numbers("3OO-7OO mmf")).toEqual([300, 700]);
});

test.each([
  // text, code, why
  ["100n 400V", null, "the n of nanofarads is no temperature code (common practice)"],
  ["47p NP 0", "NP0", "EIA RS-198: NP0, its parts printed apart"],
  ["47 mmf N 150", "N150", "EIA RS-198: N150"],
])("%s has the temperature code %s: %s", (text, code, _why) => expect(readWords(text).coefficient).toBe(code));
