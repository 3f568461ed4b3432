import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { orderQuantity } from "../../../src/core/index.js";

const single = { pack: 1, minimum: 1, multiple: 1 };

describe("how much to order", () => {
  test.each([
    // needed, spares, at hand, terms, units, pieces, why
    [7, 0, 0, single, 7, 7, "single pieces"],
    [7, 0.1, 0, single, 8, 8, "spares are whole pieces"],
    [10, 0.1, 0, single, 11, 11, "ten and one, without dust of binary fractions"],
    [7, 0.1, 2, { ...single, pack: 5 }, 2, 10, "6 pieces are two packs of 5"],
    [7, 0, 9, single, 0, 0, "enough at hand"],
    [0, 0.5, 0, single, 0, 0, "nothing needed, no spares"],
    [3, 0, 0, { pack: 1, minimum: 10, multiple: 1 }, 10, 10, "the vendor's minimum"],
    [11, 0, 0, { pack: 1, minimum: 10, multiple: 10 }, 20, 20, "in tens"],
    [11, 0, 0, { pack: 5, minimum: 1, multiple: 2 }, 4, 20, "three packs are bought as four"],
  ])(
    "%d needed, %d spares, %d at hand, %j: %d units, %d pieces, %s",
    (needed, spares, onHand, terms, units, pieces) => {
      expect(orderQuantity({ needed, spares, onHand }, terms)).toEqual({ units, pieces });
    },
  );

  test.each([0, 2.5, -1])("a pack of %d is refused", (pack) => {
    expect(() => orderQuantity({ needed: 1, spares: 0, onHand: 0 }, { ...single, pack })).toThrow(
      "whole numbers from 1",
    );
  });

  test("what is ordered covers what is missing, in whole packs and multiples, and never by a whole step too many", () => {
    const count = fc.integer({ min: 1, max: 30 });
    fc.assert(
      fc.property(count, fc.nat(50), count, count, count, (needed, onHand, pack, minimum, multiple) => {
        const { units, pieces } = orderQuantity({ needed, spares: 0, onHand }, { pack, minimum, multiple });
        expect(pieces + onHand).toBeGreaterThanOrEqual(needed);
        expect(units % multiple).toBe(0);
        if (units > 0) expect(units).toBeGreaterThanOrEqual(minimum);
        if (units > minimum + multiple) expect((units - multiple) * pack + onHand).toBeLessThan(needed);
      }),
    );
  });
});
