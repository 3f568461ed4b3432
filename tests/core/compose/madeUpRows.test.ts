import { describe, expect, test } from "vitest";
import { madeUpRows } from "../../../src/core/compose/madeUpRows.js";
import { type StockPart, stockOf } from "../../../src/core/compose/stock.js";
import type { Wants } from "../../../src/core/compose/wants.js";

describe("made-up values as rows of a sheet", () => {
  const window = { min: 2.97e6, max: 3.03e6 };

  test("3 M of 1 M and 2 M is drawn with each part's share of the watts (worked: 2/3 and 1/3) and the price", () => {
    const stock = stockOf([1e6, 2e6], { price: 0.25 });
    expect(madeUpRows({ kind: "resistor", wanted: 3e6, window, stock })).toEqual([
      ["2 M + 1 M", 3e6, 0, "66.7 %, 33.3 %", 0.5],
    ]);
  });

  test("for capacitors the shares are those of the volts, and an unknown price stays blank (worked: 2 to 1)", () => {
    const stock = stockOf([10e-9, 20e-9]);
    const wants = { kind: "capacitor", wanted: 20e-9 / 3, window: { min: 6.6e-9, max: 6.7e-9 } } as const;
    expect(madeUpRows({ ...wants, stock })).toEqual([
      ["0.02 µF + 0.01 µF", 6.66666666666667e-9, 0, "33.3 %, 66.7 %", null],
    ]);
  });

  const T5 = { minus: 0.05, plus: 0.05 };

  test.each<[StockPart[], Partial<Wants>, string, string]>([
    [stockOf([1.3e6]), {}, "The nearest that does is 8.33 % off: 1.3 M + 1.3 M + (1.3 M || 1.3 M).", "3.25 M"],
    [stockOf([3e6], { tolerance: T5 }), {}, "is 0 % off, 5 % at the ends of its tolerances: 3 M.", "its tolerance"],
    [stockOf([3e6], { watts: 0.5 }), { watts: 3 }, "Nor is there one of a value nearby", "four bear 2 W at most"],
    [stockOf([3e6]), { mostPrice: 5 }, "Nor is there one of a value nearby", "no price is known"],
    [stockOf([1]), {}, "Nor is there one of a value nearby", "four ohms at most"],
  ])("where none is near enough the nearest stands there: %#", (stock, more, said) => {
    const wants = { kind: "resistor", wanted: 3e6, window, stock, mostParts: 4, ...more } as const;
    expect(() => madeUpRows(wants)).toThrow(said);
  });

  test("says so where the search was broken off", () => {
    const stock = stockOf(
      Array.from({ length: 400 }, (_, i) => 1000 * 1.012 ** i),
      { watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } },
    );
    const wants = { kind: "resistor", wanted: 30_000, window: { min: 24_000, max: 36_000 }, watts: 1.75 } as const;
    expect(() => madeUpRows({ ...wants, stock })).toThrow("The search was broken off");
  });
});
