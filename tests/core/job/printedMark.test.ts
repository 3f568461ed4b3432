import { describe, expect, test } from "vitest";
import { printedMark } from "../../../src/core/index.js";

describe("what is printed on a part", () => {
  // MIL-R-11 and JAN-C-5 for the designations, IEC 60062 for the markings; the designations from memory.
  test.each([
    ["RC20BF474K", "capacitor", 470e3, "ohm", 0.1, ["type designation: 1/2 W composition resistor"]],
    ["CM20B101K", "capacitor", 100e-12, "farad", 0.1, ["type designation: mica capacitor"]],
    ["104K", "capacitor", 100e-9, "farad", 0.1, []],
    ["4K7", "resistor", 4700, "ohm", null, []],
  ] as const)("%s", (text, kind, value, unit, tolerance, notes) => {
    const mark = printedMark(text, kind, "IEC");
    expect(mark).toMatchObject({ unit, notes });
    expect(mark.value).toBeCloseTo(value, 15);
    expect(mark.tolerance?.plus ?? null).toBe(tolerance);
  });

  test("a designation whose figures make no sense is read as a marking, and refused as one", () => {
    expect(() => printedMark("RC20BFK", "resistor", "IEC")).toThrow(/RC20BFK/);
  });
});
