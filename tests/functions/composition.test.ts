import { beforeAll, describe, expect, test } from "vitest";
import { makeUp, splitSeries } from "../../src/functions/composition.js";
import { provideCustomFunctions } from "./customFunctions.js";

beforeAll(provideCustomFunctions);

const one = (cell: unknown) => [[cell]];
const messageOf = (work: () => unknown): string => {
  try {
    work();
    return "no error";
  } catch (error) {
    return (error as Error).message;
  }
};

describe("MAKE_UP in a sheet", () => {
  test("250 pF is 220 and 30 in parallel, where these are at hand (common practice)", () => {
    expect(makeUp(one("250 pF"), [[220e-12], [30e-12], [200e-12]])[0]!.slice(0, 2)).toEqual([
      "220 pF || 30 pF",
      250e-12,
    ]);
  });

  test("a column of values gets the best way for each, and a blank stays blank", () => {
    const column = makeUp([["3.3 k"], [null], ["3 M"]], one("E12"));
    expect(column.map((row) => row[0])).toEqual(["3.3 k", "", "1.5 M + 1.5 M"]);
  });

  test("of ways that are equally near the load is spread most evenly, so that no part runs hotter than it must", () => {
    expect(makeUp(one("250 pF"), one("E24"))[0]![0]).toBe("130 pF || 120 pF");
  });

  test("a drawer is a range: values or series, then watts, volts, tolerance, price and pieces", () => {
    const drawer = [
      ["1.5 k", "5 W", 500, "", 0.9, 1],
      [6000, 5, "500 V", "5 %", 0.4, 2],
      [null, null, null, null, null, null],
    ];
    const [row] = makeUp(one(3000), drawer, one(0.06), one(2), one(1), one(9.5));
    expect(row).toEqual(["6 k || 6 k", 3000, 0, "50 %, 50 %", 0.8]);
  });

  test("one row with a series is that series with those ratings", () => {
    const [row] = makeUp(one("47 k"), [["E24", 0.5, 350]], one(0.02), one(4), one(1), one("1.5 W"));
    expect(String(row![0]).split(/[+|]+/)).toHaveLength(4);
  });

  test("where nothing does it says what would help", () => {
    const nothing = () => makeUp(one("47 k"), [["E24", 0.25]], one(0.01), one(4), one(1), one(5));
    expect(messageOf(nothing)).toContain("None within 1 %. Nor is there one of a value nearby");
  });

  test.each([
    [() => makeUp(one("47 x"), one("E24")), 'wanted: Can\'t read "47 x".'],
    [() => makeUp(one("47 k"), one("E2x")), 'stock row 1, value: Can\'t read "E2x".'],
    [() => makeUp(one("47 k"), [["", ""]]), "No parts were found in the stock given."],
    [() => makeUp(one("47 k"), [["E24", "much"]]), 'stock row 1, watts: Can\'t read "much".'],
    [() => makeUp(one("47 k"), one("E24"), one("a bit")), 'within: Can\'t read "a bit".'],
  ])("bad input %# is named: %s", (work, message) => expect(messageOf(work)).toContain(message));
});

describe("SPLIT_SERIES in a sheet", () => {
  test("divides 250 V over 220 k and 100 k as 69 and 31 in a hundred (worked: 220/320)", () => {
    expect(splitSeries(one(320_000), [[220_000], [100_000]])).toEqual([[220_000, 100_000, 320_000, 0, 0.6875, 0.3125]]);
  });

  test("for capacitors in series gives the shares of the volts: the smaller takes more (worked: 16/24)", () => {
    const [row] = splitSeries(one(16e-6 / 3), [[8e-6], [16e-6]]);
    expect(row!.slice(-2).map((share) => Number((share as number).toFixed(4)))).toEqual([0.3333, 0.6667]);
  });

  test("lists several pairs, best first", () => {
    const offs = splitSeries(one("12.3 k"), one("E12"), one(5)).map((row) => Math.abs(row[3] as number));
    expect(offs).toHaveLength(5);
    expect(offs).toEqual([...offs].sort((a, b) => a - b));
  });
});
