import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { IN_PLACE_QUANTITIES, type InPlaceQuantity, inPlaceTells, trueSpan, verdict } from "../../../src/core/index.js";

const window = { min: 80, max: 120 };
const NOTHING = "says nothing in place";

describe("a reading taken in place (common practice)", () => {
  test.each<[InPlaceQuantity, string, string, string]>([
    // quantity, far too low, in the window, far too high
    ["resistance", NOTHING, NOTHING, "bad"],
    ["ESR", NOTHING, NOTHING, "bad"],
    ["capacitance", "bad", NOTHING, NOTHING],
    ["insulation", NOTHING, "good", "good"],
    ["leakage", "good", "good", NOTHING],
    ["inductance", NOTHING, NOTHING, NOTHING],
  ])("%s: low is %s, inside is %s, high is %s", (quantity, low, inside, high) => {
    const tells = (reading: number) => inPlaceTells({ quantity, reading, uncertainty: 1, window }).verdict;
    expect([tells(50), tells(100), tells(200)]).toEqual([low, inside, high]);
  });

  test("a high resistance within the meter's uncertainty does not convict", () => {
    const tells = (reading: number) =>
      inPlaceTells({ quantity: "resistance", reading, uncertainty: 5, window }).verdict;
    expect([tells(124), tells(126)]).toEqual([NOTHING, "bad"]);
  });

  test("a quantity that is not known is refused with those that are", () => {
    const read = { quantity: "colour" as InPlaceQuantity, reading: 1, uncertainty: 0, window };
    expect(() => inPlaceTells(read)).toThrow("Read one of: resistance, insulation");
  });

  test("what it calls bad is bad once lifted: neighbours only lower resistance and raise capacitance", () => {
    const positive = fc.double({ min: 1, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(positive, positive, fc.double({ min: 0, max: 10, noNaN: true }), (lifted, neighbour, uncertainty) => {
        const ohms = 1 / (1 / lifted + 1 / neighbour);
        const resistance = inPlaceTells({ quantity: "resistance", reading: ohms, uncertainty, window });
        if (resistance.verdict === "bad")
          expect(verdict({ reading: lifted, uncertainty, window }, "simple")).toBe("bad");
        const capacitance = inPlaceTells({ quantity: "capacitance", reading: lifted + neighbour, uncertainty, window });
        if (capacitance.verdict === "bad")
          expect(verdict({ reading: lifted, uncertainty, window }, "simple")).toBe("bad");
      }),
    );
  });

  test.each(IN_PLACE_QUANTITIES)("%s has its reason in words", (quantity) => {
    expect(inPlaceTells({ quantity, reading: 100, uncertainty: 1, window }).because).not.toBe("");
  });
});

describe("between what the true value lies", () => {
  const read = { reading: 100, uncertainty: 2 };
  // Neighbours only lower resistance, insulation and ESR, and only raise capacitance and leakage (common practice).
  test.each<[InPlaceQuantity, number, number]>([
    ["resistance", 98, Number.POSITIVE_INFINITY],
    ["insulation", 98, Number.POSITIVE_INFINITY],
    ["ESR", 98, Number.POSITIVE_INFINITY],
    ["capacitance", 0, 102],
    ["leakage", 0, 102],
    ["inductance", 0, Number.POSITIVE_INFINITY],
  ])("%s read in place: %d to %d", (quantity, min, max) => {
    expect(trueSpan({ quantity, ...read, inPlace: true })).toEqual({ min, max });
  });

  test("lifted, the meter alone bounds it", () => {
    expect(trueSpan({ quantity: "resistance", ...read, inPlace: false })).toEqual({ min: 98, max: 102 });
  });
});
