import { describe, expect, test } from "vitest";
import { boundsOf, leavesEnough } from "../../../src/core/compose/bounds.js";
import { stockOf } from "../../../src/core/compose/stock.js";
import type { Wants } from "../../../src/core/compose/wants.js";
import { wants } from "./someWants.js";

describe("whether so many parts could do at all", () => {
  const strong = stockOf([1000], { watts: 2, pieces: 1, price: 1 });
  const weak = stockOf([500], { watts: 0.5, price: 0.2 });
  const parts = [...strong, ...weak];

  test.each<[number, Partial<Wants>, boolean, string]>([
    [1, { watts: 2 }, true, "the one strong part"],
    [2, { watts: 2.5 }, true, "the strong one and a weak one"],
    [2, { watts: 2.6 }, false, "there is only one strong one"],
    [4, { watts: 3.5 }, true, "with three weak ones"],
    [4, { watts: 3.6 }, false, "not more"],
    [2, { volts: 1 }, false, "their volts are not known"],
    [4, { mostPrice: 0.8 }, true, "four of the cheapest"],
    [4, { mostPrice: 0.79 }, false, "not for less"],
    [4, {}, true, "nothing is asked of them"],
  ])("%i parts for %j: %s (%s)", (count, asked, could) => {
    expect(boundsOf(parts, count, wants(asked)) !== null).toBe(could);
  });

  test("where four half-watt parts just bear 2 W, each takes a quarter (worked: 1 - 3 x 0.25)", () => {
    const bounds = boundsOf(stockOf([1000], { watts: 0.5 }), 4, wants({ watts: 2 }))!;
    expect(bounds.least).toBeCloseTo(0.25, 6);
    expect(bounds.most).toBeCloseTo(0.25, 6);
  });

  test("for 3 W one of four parts of 0.5 and 2 W has to be the strong one, or better both of two", () => {
    const bounds = boundsOf(parts, 4, wants({ watts: 3 }))!;
    expect(leavesEnough(bounds, [0, 1, 1, 1])).toBe(true);
    expect(leavesEnough(bounds, [1, 1, 1, 1])).toBe(false);
  });

  test("for 1.40 two of the dear part leave no money for two more (worked: 2 x 1.00 + 2 x 0.20)", () => {
    const bounds = boundsOf(parts, 4, wants({ mostPrice: 1.4 }))!;
    expect(leavesEnough(bounds, [0])).toBe(false);
    expect(leavesEnough(boundsOf(parts, 4, wants({ mostPrice: 1.6 }))!, [0])).toBe(true);
  });
});
