import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { PartsError } from "../../../src/core/problem.js";
import { readValue } from "../../../src/core/quantity/readValue.js";

describe("a value as a restorer writes it", () => {
  test.each([
    // text, value, unit, why
    ["470K", 470_000, "ohm", "K is thousand"],
    ["470 k", 470_000, "ohm", "our own writing reads back"],
    ["470,000", 470_000, null, "a comma before three digits groups thousands; nothing tells the unit"],
    ["470,000 ohms", 470_000, "ohm", "the word tells the unit"],
    ["4.7 meg", 4_700_000, "ohm", "meg is a million"],
    ["1/2 meg.", 500_000, "ohm", "a fraction"],
    ["1 1/2 MEG", 1_500_000, "ohm", "a mixed number"],
    ["½ megohm", 500_000, "ohm", "a vulgar fraction"],
    ["2.2 megohms", 2_200_000, "ohm", "one word"],
    ["4K7", 4_700, "ohm", "the letter is the point, IEC 60062:2016"],
    ["2R2", 2.2, "ohm", "R is the point of ohms, IEC 60062:2016"],
    ["R47", 0.47, "ohm", "R first: below one ohm, IEC 60062:2016"],
    ["3k3Ω", 3_300, "ohm", "letter as point and the sign after"],
    ["100R", 100, "ohm", "R without decimals"],
    ["1M", 1e6, "ohm", "capital M is a million unless the document says otherwise"],
    [".05 mfd", 5e-8, "farad", "mfd is microfarad"],
    ["250 mmf", 2.5e-10, "farad", "mmf is micromicrofarad"],
    ["0.0015 uF", 1.5e-9, "farad", "u for micro"],
    ["0.047 µF", 4.7e-8, "farad", "our own writing reads back"],
    ["8 mf", 8e-6, "farad", "mf was never millifarad"],
    ["4n7", 4.7e-9, "farad", "IEC 60062:2016"],
    ["4,7nF", 4.7e-9, "farad", "decimal comma"],
    ["0,047 µF", 4.7e-8, "farad", "decimal comma after a lone zero"],
    ["3µF3", 3.3e-6, "farad", "unit inside"],
    ["220 p", 2.2e-10, "farad", "a bare p is said of capacitors"],
    ["2.5 mH", 2.5e-3, "henry", "millihenry"],
    ["8 hy", 8, "henry", "hy is henry"],
    ["1.5 microhenry", 1.5e-6, "henry", "in full"],
  ] as const)("%s is %d %s: %s", (text, value, unit, _why) => {
    const read = readValue(text);
    expect(read.value / value).toBeCloseTo(1, 12);
    expect(read.unit).toBe(unit);
  });

  test("in a document of the 1930s a bare M is a thousand when it says so", () => {
    expect(readValue("500M", { capitalM: "thousand" }).value).toBe(500_000);
    expect(readValue("500M", { capitalM: "million" }).value).toBe(500_000_000);
  });

  test("on a capacitor M stands for microfarad", () => {
    expect(readValue(".02 M", { kind: "capacitor" })).toEqual({ value: 2e-8, unit: "farad", kind: "capacitor" });
  });

  test.each(["", "4k7x", "banana", "1/2 W", "450 V", "--", "4..7k", "1e5", "=1+1"])("%s is no value", (text) => {
    expect(() => readValue(text)).toThrow(PartsError);
  });

  test("any text is read or refused, never anything else", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (text) => {
        try {
          return Number.isFinite(readValue(text).value);
        } catch (error) {
          return error instanceof PartsError;
        }
      }),
    );
  });
});
