import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { idsToGive, nextIds } from "../../../src/core/index.js";

describe("row ids", () => {
  test.each([
    // taken, families, given, why
    [[], [1, 1], [["HL-1"], ["HL-2"]], "a new sheet starts at 1"],
    [["HL-7", "HL-3"], [1], [["HL-8"]], "it goes on after the highest, wherever that row was sorted to"],
    [["QB-90"], [1], [["HL-1"]], "another set's numbers do not count"],
    [["HL-4a", "HL-4b"], [1], [["HL-5"]], "the sections of a can share one number"],
    [[], [2, 1], [["HL-1a", "HL-1b"], ["HL-2"]], "a can of two sections becomes a and b"],
  ])("with %j taken, families of %j get %j: %s", (taken, families, given) => {
    expect(nextIds("HL", taken, families)).toEqual(given);
  });

  test("a copied row, which stands further down, gets an id of its own", () => {
    expect([...idsToGive("HL", ["HL-1", "HL-2", "HL-1", null])]).toEqual([
      [2, "HL-3"],
      [3, "HL-4"],
    ]);
  });

  test("an id is never given twice", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 30 }), (families) => {
        const given = nextIds("HL", ["HL-2", "HL-9c"], families).flat();
        expect(new Set([...given, "HL-2", "HL-9c"]).size).toBe(given.length + 2);
      }),
    );
  });
});
