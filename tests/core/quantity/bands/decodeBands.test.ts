import { describe, expect, test } from "vitest";
import { type BandCode, type Colour, decodeBands, readTolerance, writeTolerance } from "../../../../src/core/index.js";

const reading = (colours: string, code: BandCode = "resistor") => decodeBands(colours, code).reading;

describe("bands of resistors", () => {
  test.each([
    // bands, ohms, tolerance, why
    ["yellow violet orange", 47_000, "±20 %", "three bands"],
    ["yellow violet orange none", 47_000, "±20 %", "a fourth that is missing"],
    ["yellow violet orange gold", 47_000, "±5 %", "four bands"],
    ["brown black black red brown", 10_000, "±1 %", "five bands have three figures"],
    ["brown black red brown", 1_000, "±1 %", "four bands at 1 % have two figures: the count decides"],
    ["green grey red silver", 5_800, "±10 %", "no preferred value is asked for"],
    ["brown black pink gold", 0.01, "±5 %", "pink since 2016"],
  ])("%s is %d ohms %s: %s", (bands, ohms, tolerance) => {
    expect(reading(bands).value).toBe(ohms);
    expect(writeTolerance(reading(bands).tolerance!)).toBe(tolerance);
  });

  test("a sixth band is the temperature coefficient", () => {
    expect(reading("brown black black red brown red").ppmPerKelvin).toBe(50);
  });

  test("a fifth band of a military part is failures in 1000 hours", () => {
    const part = reading("brown black red gold orange", "reliability");
    expect(part.value).toBe(1_000);
    expect(part.tolerance).toEqual(readTolerance("gold"));
    expect(part.failures).toBe(0.0001);
  });

  test("five bands that could be a military part say so", () => {
    expect(reading("brown black red gold brown").notes[0]).toContain("reliability");
  });

  test("a salmon pink fifth band is no multiplier", () => {
    const part = reading("brown black red gold pink");
    expect(part.value).toBe(1_000);
    expect(part.notes[0]).toContain("high stability");
  });

  test("orange as a tolerance warns of old charts", () => {
    expect(reading("brown black red orange").notes[0]).toContain("old charts give orange 3 %");
  });
});

describe("the other way round", () => {
  test.each([
    ["brown black black brown brown", 110, "both ways make a part of 1 %"],
    ["red red brown brown", 1_100, "four bands with a brown tolerance work both ways"],
  ])("%s could also be %d ohms: %s", (bands, ohms) => expect(decodeBands(bands).turned?.value).toBe(ohms));

  test.each([
    ["yellow violet orange gold", "gold is no figure"],
    ["brown black black red black", "no value starts with nought, and black is no tolerance"],
    ["red red red", "it reads the same from both ends"],
  ])("%s works one way only: %s", (bands) => {
    try {
      expect(decodeBands(bands).turned).toBeNull();
    } catch (problem) {
      expect(String(problem)).toContain("The tolerance band is one of");
    }
  });

  test("a code with a fixed place for each colour is never turned", () => {
    expect(decodeBands("red green black", "mica, three dots").turned).toBeNull();
  });
});

describe("other codes", () => {
  test("body, end and dot; an end that can't be seen has the body's colour", () => {
    expect(reading("green grey red", "body-end-dot").value).toBe(5_800);
    expect(reading("red none brown", "body-end-dot").value).toBe(220);
    expect(reading("yellow violet orange gold", "body-end-dot").tolerance).toEqual(readTolerance("gold"));
  });

  test("the same six dots are different parts in the two mica codes", () => {
    const dots = "black green brown red yellow black";
    const typeFirst = reading(dots, "mica, type first");
    const threeFigures = reading(dots, "mica, three figures");
    expect(typeFirst.value).toBeCloseTo(51e-12, 20);
    expect([typeFirst.volts, threeFigures.volts]).toEqual([500, 200]);
    expect([typeFirst.characteristic, threeFigures.characteristic]).toEqual(["C", null]);
    expect(reading("brown green brown red yellow black", "mica, three figures").value).toBeCloseTo(151e-12, 20);
  });

  test("a first dot that is neither black nor white is paper", () => {
    expect(reading("silver green brown red gold black", "mica, type first").notes[0]).toContain("paper");
  });

  test("a large military mica is 300 V", () => {
    expect(reading("black violet green red gold brown", "mica, type first").volts).toBe(500);
    expect(reading("black violet green red gold red", "mica, type first").volts).toBe(300);
  });

  test("moulded paper: one voltage band counts hundreds, two give a rating from 1000 V on", () => {
    expect(reading("red red orange black yellow", "moulded paper").value).toBeCloseTo(0.022e-6, 15);
    expect(reading("red red orange black yellow", "moulded paper").volts).toBe(400);
    expect(reading("brown black red white brown blue", "moulded paper").volts).toBe(1_600);
  });

  test("a ceramic's first band is its temperature coefficient", () => {
    const part = reading("violet yellow violet brown green", "ceramic");
    expect(part.value).toBeCloseTo(470e-12, 20);
    expect(part.ppmPerKelvin).toBe(-750);
    expect(part.tolerance).toEqual(readTolerance("5 %"));
  });

  test("on a ceramic up to 10 pF the tolerance counts picofarads", () => {
    const part = reading("black green black black green", "ceramic"); // 50 x 1 = 50 pF is large
    expect(part.tolerance).toEqual(readTolerance("5 %"));
    const small = reading("black green black white green", "ceramic"); // 50 x 0.1 = 5 pF, half a picofarad
    expect(small.value).toBeCloseTo(5e-12, 20);
    expect(small.tolerance?.plus).toBeCloseTo(0.1, 9);
  });
});

test.each<[string, BandCode, string]>([
  ["red red", "resistor", "A resistor has 3 to 6 bands."],
  ["gold red red", "resistor", "This band is a figure"],
  ["red red none gold", "resistor", "The multiplier is one of"],
  ["red red red black", "resistor", "The tolerance band is one of"],
  ["red red red gold gold", "reliability", "The reliability band is one of"],
  ["red red red gold", "reliability", "This code has five bands."],
  ["red red", "body-end-dot", "Give body, end and dot"],
  ["red red red", "mica, type first", "six dots"],
  ["red red", "mica, three dots", "three dots"],
  ["red red red", "moulded paper", "Give figure, figure, multiplier"],
  ["gold red red red red", "ceramic", "The temperature band is one of"],
])("%s can't be a part in the code %s: %s", (colours, code, text) => {
  expect(() => decodeBands(colours as string | readonly Colour[], code)).toThrow(text);
});
