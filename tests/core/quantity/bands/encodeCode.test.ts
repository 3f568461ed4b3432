import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CodedPart, decodeBands, encodeCode, readTolerance } from "../../../../src/core/index.js";

type Code = Parameters<typeof encodeCode>[1];
const part = (value: number, tolerance: string, more: Partial<CodedPart> = {}): CodedPart => ({
  ...{ value, tolerance: readTolerance(tolerance) },
  ...more,
});

describe("the colours of a part in each of the other codes", () => {
  test.each<[Code, CodedPart, string, string]>([
    ["reliability", part(1000, "5 %", { failures: 0.0001 }), "brown black red gold orange", "MIL-R-39008; OD1633"],
    ["body-end-dot", part(5800, "20 %"), "green grey red none", "RMA body-end-dot; 20 % has no coloured end"],
    ["mica, type first", part(1.2e-9, "10 %", { characteristic: "a" }), "white brown red black white red", "REC-115A"],
    ["mica, three figures", part(51e-12, "4 %", { volts: 200 }), "black green brown red yellow black", "RMA six-dot"],
    ["mica, three dots", part(25e-12, "20 %"), "red green black", "RMA three-dot: 20 %, 500 V"],
    ["moulded paper", part(0.022e-6, "20 %", { volts: 400 }), "red red orange black yellow", "moulded paper tubular"],
    [
      "moulded paper",
      part(0.1e-6, "10 %", { volts: 1600 }),
      "brown black yellow white brown blue",
      "two bands from 1 kV",
    ],
    [
      "ceramic",
      part(47e-12, "5 %", { ppmPerKelvin: -750 }),
      "violet yellow violet black green",
      "JAN-C-20; EIA RS-198",
    ],
    ["ceramic", part(5e-12, "5 %", { ppmPerKelvin: 0 }), "black green black white grey", "up to 10 pF in picofarads"],
  ])("%s %#: %s %s (%s)", (code, coded, colours) => expect(encodeCode(coded, code).join(" ")).toBe(colours));

  test.each<[Code, CodedPart, string]>([
    ["reliability", part(1000, "5 %"), "this failure rate"],
    ["body-end-dot", part(1000, "2 %"), "A coloured end says 5 or 10 %"],
    ["mica, type first", part(1e-9, "10 %"), "this characteristic"],
    ["mica, three figures", part(51e-12, "5 %", { volts: 350 }), "The dot says whole hundreds"],
    ["mica, three dots", part(25e-12, "5 %"), "use six dots"],
    ["mica, three dots", part(25e-12, "20 %", { volts: 300 }), "use six dots"],
    ["moulded paper", part(0.022e-6, "20 %", { volts: 450 }), "whole hundreds of volts"],
    ["ceramic", part(47e-12, "5 %"), "this temperature coefficient"],
    ["ceramic", part(47.5e-12, "5 %", { ppmPerKelvin: 0 }), "write 2 figures"],
  ])("%s says what it can't write: %j, %s", (code, coded, said) => {
    expect(() => encodeCode(coded, code)).toThrow(said);
  });
});

describe("what is encoded is decoded as the same part", () => {
  const figures = fc.integer({ min: 10, max: 99 });
  const anyPart = (code: Code, tolerances: readonly string[], more: fc.Arbitrary<Partial<CodedPart>>, ohms = false) =>
    fc
      .tuple(figures, fc.integer({ min: 0, max: 3 }), fc.constantFrom(...tolerances), more)
      .map(([whole, power, ratio, rest]) => {
        const value = Number(`${whole}e${power - (ohms ? 0 : 12)}`);
        return [code, part(value, ratio, rest)] as const;
      });
  const none = fc.constant({});
  const volts = fc.integer({ min: 1, max: 9 }).map((hundreds) => ({ volts: hundreds * 100 }));

  test("in every code, with all that it writes", () => {
    const any = fc.oneof(
      anyPart(
        "reliability",
        ["5 %", "10 %"],
        fc.constantFrom(0.01, 0.001, 0.0001, 0.00001).map((failures) => ({ failures })),
        true,
      ),
      anyPart("body-end-dot", ["5 %", "10 %", "20 %"], none, true),
      anyPart(
        "mica, type first",
        ["2 %", "5 %", "10 %"],
        fc.constantFrom(..."ABCDEF").map((characteristic) => ({ characteristic })),
      ),
      anyPart("mica, three figures", ["2 %", "5 %", "10 %", "20 %"], volts),
      anyPart("mica, three dots", ["20 %"], fc.constant({ volts: 500 })),
      anyPart(
        "moulded paper",
        ["5 %", "10 %", "20 %"],
        fc.integer({ min: 1, max: 99 }).map((hundreds) => ({ volts: hundreds * 100 })),
      ),
      anyPart(
        "ceramic",
        ["2 %", "5 %", "10 %"],
        fc.constantFrom(0, -30, -330, -750).map((ppmPerKelvin) => ({ ppmPerKelvin })),
      ).filter(([, { value }]) => value > 10e-12),
    );
    fc.assert(
      fc.property(any, ([code, coded]) => {
        const { reading } = decodeBands(encodeCode(coded, code), code);
        expect(reading.value / coded.value).toBeCloseTo(1, 12);
        expect(reading.tolerance!.plus).toBeCloseTo(coded.tolerance.plus, 12);
        for (const key of ["ppmPerKelvin", "volts", "failures", "characteristic"] as const)
          if (coded[key] !== undefined) expect(reading[key]).toBe(coded[key]);
      }),
    );
  });
});
