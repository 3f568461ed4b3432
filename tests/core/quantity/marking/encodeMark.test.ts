import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { close, decodeMark, encodeMark, type MarkStyle, readTolerance, SERIES } from "../../../../src/core/index.js";

describe("the marking of a part", () => {
  test.each<[number, "resistor" | "capacitor", MarkStyle, string | null, string]>([
    [0.1e-6, "capacitor", "3 figures", "10 %", "104K"],
    [2.2e-12, "capacitor", "3 figures", null, "229"],
    [47_000, "resistor", "3 figures", null, "473"],
    [47_000, "resistor", "4 figures", "1 %", "4702F"],
    [4_700, "resistor", "letter", "5 %", "4K7J"],
    [4.7e-9, "capacitor", "letter", null, "4n7"],
  ])("%d (%s) in %s, %s, is %s", (value, kind, style, tolerance, text) => {
    expect(encodeMark({ value, kind, tolerance: tolerance ? readTolerance(tolerance) : null }, style)).toBe(text);
  });

  test.each<[number, "resistor" | "capacitor", MarkStyle, string]>([
    [2_260, "resistor", "3 figures", "Use the letter code"],
    [4.7, "resistor", "3 figures", "Use the letter code"],
    [0.1e-12, "capacitor", "4 figures", "Use the letter code"],
  ])("%d (%s) has no marking in %s: %s", (value, kind, style, text) => {
    expect(() => encodeMark({ value, kind }, style)).toThrow(text);
  });

  test("10 % behind a resistor's figures would be read as kilohms, and that is said", () => {
    const part = { value: 47_000, kind: "resistor" as const, tolerance: readTolerance("10 %") };
    expect(() => encodeMark(part, "3 figures")).toThrow("473K would be read as a multiplier");
    expect(encodeMark(part, "letter")).toBe("47KK");
  });

  test("a tolerance without a letter is said", () => {
    expect(() => encodeMark({ value: 1e-8, kind: "capacitor", tolerance: readTolerance("7 %") }, "3 figures")).toThrow(
      "IEC has no letter for it",
    );
  });

  test("what is marked is read back, in every style", () => {
    const place = fc.nat(SERIES.E24.steps.length - 1);
    const style = fc.constantFrom<MarkStyle>("3 figures", "4 figures", "letter");
    const kind = fc.constantFrom("resistor" as const, "capacitor" as const);
    fc.assert(
      fc.property(place, fc.integer({ min: 2, max: 6 }), style, kind, (index, decade, how, of) => {
        const value = Number(`${SERIES.E24.steps[index]}e${decade - 2 - (of === "capacitor" ? 12 : 0)}`);
        expect(close(decodeMark(encodeMark({ value, kind: of }, how), of).value, value)).toBe(true);
      }),
    );
  });
});
