import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  close,
  type Kind,
  readValue,
  SERIES,
  VALUE_STYLES,
  type ValueStyle,
  writeValue,
} from "../../../src/core/index.js";

describe("writing a value", () => {
  test.each<[number, Kind | null, string, string, string]>([
    // value, kind, modern, code, old
    [0.47, "resistor", "0.47 Ω", "R47", ".47 ohms"],
    [220, "resistor", "220 Ω", "220R", "220 ohms"],
    [4_700, "resistor", "4.7 k", "4K7", "4.7K"],
    [470_000, "resistor", "470 k", "470K", "470K"],
    [2_200_000, "resistor", "2.2 M", "2M2", "2.2 meg"],
    [47_300, null, "47.3 k", "47K3", "47.3K"],
    [220, null, "220", "220R", "220"],
    [4.7e-8, "capacitor", "0.047 µF", "47n", ".047 mfd"],
    [1e-9, "capacitor", "0.001 µF", "1n", ".001 mfd"],
    [250e-12, "capacitor", "250 pF", "250p", "250 mmf"],
    [4.7e-12, "capacitor", "4.7 pF", "4p7", "4.7 mmf"],
    [0.5e-12, "capacitor", "0.5 pF", "p5", ".5 mmf"],
    [8e-6, "capacitor", "8 µF", "8µ", "8 mfd"],
    [1500e-6, "capacitor", "1500 µF", "1500µ", "1500 mfd"],
  ])("%d (%s) is %s, %s in the letter code, %s in an old list", (value, kind, modern, code, old) => {
    expect(writeValue(value, kind)).toBe(modern);
    expect(writeValue(value, kind, "code")).toBe(code);
    expect(writeValue(value, kind, "old")).toBe(old);
  });

  test.each<[number, ValueStyle, string]>([
    [350e-6, "modern", "350 µH"],
    [2.5e-3, "modern", "2.5 mH"],
    [10, "modern", "10 H"],
    [2.5e-3, "old", "2.5 mh"],
    [10, "old", "10 h"],
  ])("%d henries (%s) are %s", (henries, style, text) => expect(writeValue(henries, "inductor", style)).toBe(text));

  test("a value is never written with an exponent", () => {
    expect(writeValue(4.7e-8, "capacitor")).not.toContain("e");
    expect(writeValue(1e-15, "inductor")).toBe("0.000000001 µH");
    expect(writeValue(1e15, "resistor")).toBe("1000000000 M");
  });

  test("rounding that reaches the next prefix takes it", () => {
    expect(writeValue(999_999.9, "resistor")).toBe("1 M");
  });

  test("inductors have no letter code", () => {
    expect(() => writeValue(1e-3, "inductor", "code")).toThrow("IEC 60062 is for resistors and capacitors.");
  });

  test.each([0, -5, Number.NaN])("%d can't be written as a value", (value) => {
    expect(() => writeValue(value, "resistor")).toThrow("between 1e-15 and 1e15");
  });
});

describe("what is written is read back", () => {
  /** Where parts of a kind are made: their decades, as powers of ten. */
  const DECADES = { resistor: [-2, 8], capacitor: [-13, -2], inductor: [-7, 1] } as const;
  const written = fc
    .record({
      kind: fc.constantFrom("resistor" as const, "capacitor" as const, "inductor" as const),
      style: fc.constantFrom<ValueStyle>(...VALUE_STYLES),
      figure: fc.integer({ min: 100_000, max: 999_999 }),
      decade: fc.nat(20),
    })
    .filter(({ kind, style }) => !(kind === "inductor" && style === "code"));

  test("in every style, to the last of six figures", () => {
    fc.assert(
      fc.property(written, ({ kind, style, figure, decade }) => {
        const [lowest, highest] = DECADES[kind];
        const value = Number(`${figure}e${lowest + (decade % (highest - lowest + 1)) - 5}`);
        const text = writeValue(value, kind, style);
        expect(close(readValue(text, { kind }).value, value), `${value} as ${text}`).toBe(true);
      }),
      { numRuns: 2_000 },
    );
  });

  test("every value of E192 over all decades comes back exactly", () => {
    for (const step of SERIES.E192.steps) {
      for (let decade = -13; decade < 9; decade++) {
        const value = Number(`${step}e${decade - 2}`);
        const kind = decade < -1 ? "capacitor" : "resistor";
        for (const style of VALUE_STYLES) expect(readValue(writeValue(value, kind, style), { kind }).value).toBe(value);
      }
    }
  });
});
