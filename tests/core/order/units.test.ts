import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cheapestUnits, costCurve, costOfUnits, leastUnits, tiersOf } from "../../../src/core/order/units.js";

const plain = {
  pack: 1,
  minimum: 1,
  multiple: 1,
  stock: null,
  breaks: [
    [1, 0.3],
    [10, 0.2],
  ] as const,
};

describe("what may be bought, and what it costs", () => {
  test("minimum, multiple and stock cut the counts of each price", () => {
    const terms = {
      ...plain,
      minimum: 2,
      multiple: 2,
      stock: 11,
      breaks: [
        [1, 0.3],
        [5, 0.2],
      ] as const,
    };
    expect(tiersOf(terms)).toEqual([
      { least: 2, most: 4, price: 0.3 },
      { least: 6, most: 10, price: 0.2 },
    ]);
  });

  test.each([
    // terms, pieces, units, cost, why
    [plain, 3, 3, 0.9, "three at 0.30"],
    [plain, 7, 10, 2, "7 x 0.30 is 2.10, ten at 0.20 are 2.00: round up to the break"],
    [plain, 6, 6, 1.8, "6 x 0.30 is 1.80, cheaper than ten"],
    [{ ...plain, pack: 5 }, 11, 3, 0.9, "11 pieces are three packs of five"],
    [{ ...plain, minimum: 4 }, 1, 4, 1.2, "four at least"],
    [{ ...plain, multiple: 4 }, 5, 8, 2.4, "in fours: eight at 0.30 are 2.40, as are twelve at 0.20"],
  ])("%j, %d pieces: %d units for %d, %s", (terms, pieces, units, cost) => {
    const found = cheapestUnits(terms, pieces)!;
    expect(found.cost).toBeCloseTo(cost, 9);
    expect(found.units).toBeGreaterThanOrEqual(units);
  });

  test("of two equally cheap purchases the larger is made: the rest goes to stock for nothing", () => {
    expect(cheapestUnits({ ...plain, multiple: 4 }, 5)?.units).toBe(12);
  });

  test("a short stock gives nothing, and the curve past it is infinite", () => {
    expect(cheapestUnits({ ...plain, stock: 2 }, 3)).toBeNull();
    expect([...costCurve({ ...plain, stock: 2 }, 3)]).toEqual([0, 0.3, 0.6, Number.POSITIVE_INFINITY]);
  });

  test("units off the multiple or below the minimum can't be bought", () => {
    expect(costOfUnits({ ...plain, multiple: 5 }, 7)).toBeNull();
    expect(costOfUnits({ ...plain, minimum: 5 }, 4)).toBeNull();
    expect(costOfUnits(plain, 10)).toBeCloseTo(2, 9);
  });

  test("the fewest units obey pack, minimum and multiple", () => {
    expect(leastUnits({ ...plain, pack: 10, minimum: 2 }, 3)).toBe(2);
    expect(leastUnits({ ...plain, multiple: 5 }, 6)).toBe(10);
    expect(leastUnits({ ...plain, stock: 4 }, 6)).toBeNull();
  });
});

test("never fewer than asked for, never dearer for fewer, and the pack only counts", () => {
  const cents = fc.integer({ min: 1, max: 500 }).map((cents) => cents / 100);
  const terms = fc
    .record({
      pack: fc.constantFrom(1, 5, 10),
      multiple: fc.constantFrom(1, 2, 5),
      price: cents,
      from: fc.integer({ min: 2, max: 50 }),
      lower: cents,
    })
    .map(({ price, from, lower, pack, multiple }) => ({
      ...{ pack, minimum: 1, multiple, stock: null },
      breaks: [
        [1, price],
        [from, Math.min(price, lower)],
      ] as const,
    }));
  fc.assert(
    fc.property(terms, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 50 }), (terms, pieces, more) => {
      const [few, many] = [cheapestUnits(terms, pieces)!, cheapestUnits(terms, pieces + more)!];
      expect(few.units * terms.pack).toBeGreaterThanOrEqual(pieces);
      expect(few.units % terms.multiple).toBe(0);
      expect(few.cost).toBeLessThanOrEqual(many.cost + 1e-9);
      expect(cheapestUnits({ ...terms, pack: 1 }, Math.ceil(pieces / terms.pack))).toEqual(few);
    }),
  );
});
