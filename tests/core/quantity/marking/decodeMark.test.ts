import { describe, expect, test } from "vitest";
import { decodeMark, type LetterSystem, readTolerance } from "../../../../src/core/index.js";

describe("what is printed on a part", () => {
  test.each<[string, "resistor" | "capacitor", number, string | null]>([
    ["104", "capacitor", 0.1e-6, null],
    ["104K", "capacitor", 0.1e-6, "10 %"],
    ["229", "capacitor", 2.2e-12, null],
    ["478", "capacitor", 0.47e-12, null],
    ["4n7J", "capacitor", 4.7e-9, "5 %"],
    ["473", "resistor", 47_000, null],
    ["4702", "resistor", 47_000, null],
    ["4K7", "resistor", 4_700, null],
    ["4K7J", "resistor", 4_700, "5 %"],
    ["R47", "resistor", 0.47, null],
    ["470K", "resistor", 470_000, null],
    ["47KK", "resistor", 47_000, "10 %"],
    ["1002F", "resistor", 10_000, "1 %"],
  ])("%s on a %s is %d, tolerance %s", (text, kind, value, tolerance) => {
    const mark = decodeMark(text, kind);
    expect(mark.value).toBeCloseTo(value, 15 - Math.ceil(Math.log10(value)));
    expect(mark.tolerance).toEqual(tolerance ? readTolerance(tolerance) : null);
  });

  test("below 10 pF a letter counts picofarads", () => {
    expect(decodeMark("479D", "capacitor").tolerance?.plus).toBeCloseTo(0.5 / 4.7, 9);
  });

  test("the same letter is another tolerance in another system", () => {
    const tolerance = (system: LetterSystem) => decodeMark("103P", "capacitor", system).tolerance;
    expect(tolerance("EIA")).toEqual({ minus: 0, plus: 1 });
    expect(tolerance("IEC")).toEqual(readTolerance("0.02 %"));
  });

  test("an old ERIE tubular means picofarads as they stand", () => {
    const mark = decodeMark("470JN", "capacitor", "ERIE");
    expect(mark.value).toBe(470e-12);
    expect(mark.tolerance).toEqual(readTolerance("5 %"));
    expect(mark.ppmPerKelvin).toBe(-750);
    expect(mark.notes[0]).toContain("as it stands");
    expect(decodeMark("3K3", "capacitor", "ERIE").value).toBe(3.3e-9);
    expect(decodeMark(".01", "capacitor", "ERIE").value).toBe(1e-8);
  });

  test.each<[string, "resistor" | "capacitor", LetterSystem]>([
    ["", "capacitor", "IEC"],
    ["hello", "resistor", "IEC"],
    ["12", "resistor", "IEC"],
    ["K", "capacitor", "ERIE"],
  ])('"%s" on a %s can\'t be read (%s), with what would work', (text, kind, system) => {
    expect(() => decodeMark(text, kind, system)).toThrow("Write it like");
  });
});
