import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { splitPair } from "../../../src/core/compose/splitPair.js";
import { stockOf } from "../../../src/core/compose/stock.js";
import { SERIES } from "../../../src/core/quantity/series.js";
import { stepsBetween } from "../../../src/core/quantity/stepsBetween.js";

const E12 = stepsBetween(10, 8.2e6, SERIES.E12);

/** The best pair by trying them all. */
function bestOf(values: readonly number[], wanted: number, together: (a: number, b: number) => number): number {
  const off = values.flatMap((a) => values.map((b) => Math.abs(Math.log(together(a, b) / wanted))));
  return Math.min(...off);
}

describe("the best pair of a series", () => {
  const beside = (a: number, b: number) => (a * b) / (a + b);

  test.each([1234, 40_777, 999_999, Math.PI * 1e5])("for %d ohms is as near as trying all pairs", (wanted) => {
    for (const [only, together] of [
      ["series", (a: number, b: number) => a + b],
      ["parallel", beside],
    ] as const) {
      const [pair] = splitPair({ kind: "resistor", wanted, only, stock: stockOf(E12), list: 1 });
      expect(Math.abs(Math.log(pair!.value / wanted))).toBeCloseTo(bestOf(E12, wanted, together), 12);
    }
  });

  test("is refused where even the best is off by more than half", () => {
    const split = { kind: "resistor", wanted: 100, only: "series", stock: stockOf([1000]), list: 1 } as const;
    expect(() => splitPair(split)).toThrow("Give a stock with more suitable values.");
  });
});

describe("laws of pairs", () => {
  const stock = fc.array(fc.integer({ min: 10, max: 999 }), { minLength: 1, maxLength: 8 });
  const wanted = fc.integer({ min: 30, max: 500 });
  const best = (
    wanted: number,
    stock: readonly number[],
    only: "series" | "parallel",
    kind: "resistor" | "capacitor",
  ) => {
    try {
      return splitPair({ kind, wanted, only, stock: stockOf(stock), list: 1 })[0]!;
    } catch {
      return null;
    }
  };

  test("the order of the stock does not matter, and a thousand times everything is a thousand times the pair", () => {
    fc.assert(
      fc.property(stock, wanted, (stock, wanted) => {
        const pair = best(wanted, stock, "series", "resistor");
        expect(best(wanted, [...stock].reverse(), "series", "resistor")?.value).toBe(pair?.value);
        const large = best(
          wanted * 1000,
          stock.map((value) => value * 1000),
          "series",
          "resistor",
        );
        expect((large?.value ?? 0) / 1000).toBeCloseTo(pair?.value ?? 0, 9);
      }),
    );
  });

  test("capacitors in parallel pair as resistors in series do", () => {
    fc.assert(
      fc.property(stock, wanted, (stock, wanted) => {
        const [series, parallel] = [
          best(wanted, stock, "series", "resistor"),
          best(wanted, stock, "parallel", "capacitor"),
        ];
        expect(parallel?.value ?? 0).toBeCloseTo(series?.value ?? 0, 9);
      }),
    );
  });
});
