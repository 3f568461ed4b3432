import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { decodeBands, encodeBands, readTolerance, SERIES } from "../../../../src/core/index.js";

describe("the bands of a resistor", () => {
  test.each<[number, string, 4 | 5, string]>([
    [47_000, "5 %", 4, "yellow violet orange gold"],
    [5.2, "10 %", 4, "green red gold silver"],
    [97, "20 %", 4, "white violet black none"],
    [3_300, "0.1 %", 5, "orange orange black brown violet"],
    [1.58, "2 %", 5, "brown green grey silver red"],
    [1e9, "5 %", 4, "brown black grey gold"],
  ])("%d ohms %s in %d bands are %s", (ohms, tolerance, bands, colours) => {
    expect(encodeBands({ ohms, tolerance: readTolerance(tolerance) }, bands).join(" ")).toBe(colours);
  });

  test.each<[number, string]>([
    [47_000, "yellow violet orange brown"],
    [2_260, "red red blue brown brown"],
  ])("left to itself %d ohms at 1 %% takes as few bands as will do: %s", (ohms, colours) => {
    expect(encodeBands({ ohms, tolerance: readTolerance("1 %") }).join(" ")).toBe(colours);
  });

  test("seven bands are refused", () => {
    expect(() => encodeBands({ ohms: 100, tolerance: readTolerance("1 %") }, 7)).toThrow("Ask for 4, 5 or 6 bands");
  });

  test("a sixth band tells the temperature coefficient", () => {
    const part = { ohms: 10_000, tolerance: readTolerance("1 %"), ppmPerKelvin: 50 };
    expect(encodeBands(part, 6).join(" ")).toBe("brown black black red brown red");
  });

  test.each<[number, string, 4 | 5, string]>([
    [2_260, "1 %", 4, "So many bands write 2 figures"],
    [1_234.5, "1 %", 5, "So many bands write 3 figures"],
    [-5, "1 %", 5, "So many bands write 3 figures"],
    [47_000, "7 %", 4, "Colours there are"],
    [1e13, "5 %", 4, "Colours there are"],
  ])("%d ohms %s do not go into %d bands: %s", (ohms, tolerance, bands, text) => {
    expect(() => encodeBands({ ohms, tolerance: readTolerance(tolerance) }, bands)).toThrow(text);
  });

  test("what is encoded is decoded as the same part, for every value of E24 and E192", () => {
    const part = fc.record({
      decade: fc.integer({ min: 0, max: 7 }),
      small: fc.boolean(),
      place: fc.nat(191),
      percent: fc.constantFrom(1, 2, 0.5, 5, 10),
    });
    fc.assert(
      fc.property(part, ({ decade, small, place, percent }) => {
        const steps = small ? SERIES.E24.steps : SERIES.E192.steps;
        const ohms = Number(`${steps[place % steps.length]}e${decade - 2}`);
        const tolerance = readTolerance(`${percent} %`);
        const { reading } = decodeBands(encodeBands({ ohms, tolerance }, small ? 4 : 5));
        expect(reading.value).toBe(ohms);
        expect(reading.tolerance?.plus).toBeCloseTo(tolerance.plus, 12);
      }),
    );
  });
});
