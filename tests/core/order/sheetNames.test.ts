import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sheetNames } from "../../../src/core/index.js";

describe("names of sheets that Excel takes", () => {
  test.each([
    // wanted, found, why
    [["Order A/B"], ["Order A-B"], "a stroke is forbidden"],
    [["Order A", "order a"], ["Order A", "order a 2"], "case does not tell sheets apart"],
    [["'quoted'"], ["quoted"], "no apostrophe at either end"],
    [["History"], ["History 2"], "Excel keeps that name for itself"],
    [["", "  "], ["Sheet", "Sheet 2"], "a name is never empty"],
    [["x".repeat(40), "x".repeat(50)], ["x".repeat(31), `${"x".repeat(29)} 2`], "31 characters, the mark included"],
  ] as const)("%j becomes %j: %s", (wanted, found, _why) => {
    expect(sheetNames(wanted)).toEqual(found);
  });

  test("a name that another sheet has is not taken", () => {
    expect(sheetNames(["Order A"], ["ORDER A"])).toEqual(["Order A 2"]);
  });

  test("whatever vendors are called, names are allowed and stand once", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme", maxLength: 45 }), { maxLength: 12 }), (wanted) => {
        const names = sheetNames(wanted);
        expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(wanted.length);
        for (const name of names) {
          expect(name.length).toBeGreaterThan(0);
          expect(name.length).toBeLessThanOrEqual(31);
          expect(name).not.toMatch(/[:\\/?*[\]]|^'|'$/);
        }
      }),
    );
  });
});
