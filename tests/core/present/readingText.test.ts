import { describe, expect, test } from "vitest";
import { joinReadings, type Kind, readReading, readReadings, slipOf } from "../../../src/core/index.js";

describe("a reading as it is typed at the bench", () => {
  test.each<[string, string | null, Kind, string, number, string]>([
    ["612", "470 k", "resistor", "resistance", 612_000, "a bare figure takes the printed unit"],
    ["1.2M", "470 k", "resistor", "resistance", 1.2e6, "a unit of its own outranks it"],
    ["0.051", "0.047 µF", "capacitor", "capacitance", 5.1e-8, "bare on a capacitor"],
    ["12", "82 Ω", "resistor", "resistance", 12, "plain ohms"],
    ["62 MΩ", "0.1 µF", "capacitor", "insulation", 6.2e7, "megohms on a capacitor are its insulation"],
    ["3 uA", "0.1 µF", "capacitor", "leakage", 3e-6, "microamperes are its leakage"],
    ["1.4 Ω", "20 µF", "capacitor", "ESR", 1.4, "ohms are its ESR"],
    ["612", null, "resistor", "resistance", 612, "no printed value: base units"],
  ])("%s on %s (%s) is %s of %d: %s", (typed, printed, kind, measured, value) => {
    const read = readReading(typed, printed, kind);
    expect([read.state, read.measured]).toEqual(["value", measured]);
    expect(read.value).toBeCloseTo(value, 12);
  });

  test.each([
    ["open", "open"],
    ["OL", "open"],
    ["short", "short"],
    ["jumps", "unsteady"],
  ])("%s is a reading too", (typed, state) => {
    expect(readReading(typed, "470 k", "resistor").state).toBe(state);
  });

  test("what is no reading is said, with what would have worked", () => {
    expect(() => readReading("about half", "470 k", "resistor")).toThrow(/about half/);
  });

  test.each<[string, Kind, string, string, string]>([
    ["open", "capacitor", "capacitance", "open", "an open capacitor has no capacitance"],
    ["OL", "capacitor", "insulation", "OL", "past the ohmmeter's end a capacitor insulates"],
    ["short", "capacitor", "insulation", "short", "a short is told in ohms"],
    ["OL", "resistor", "resistance", "open", "past the end a resistor is open"],
    ["open", "inductor", "resistance", "open", "an open coil is told in ohms"],
    ["400 nA", "capacitor", "leakage", "400 nA", "leakage by any prefix"],
  ])("%s on a %s is its %s, written %s: %s", (typed, kind, measured, text) => {
    const read = readReading(typed, "1 µF", kind);
    expect([read.measured, read.text]).toEqual([measured, text]);
  });
});

describe("a leak or an insulation at the volts of its test", () => {
  test.each<[string, string, number, number | null, string]>([
    ["4 uA at 200 V", "leakage", 4e-6, 200, "4 µA at 200 V"],
    ["62 MΩ @ 400V", "insulation", 62e6, 400, "62 MΩ at 400 V"],
    ["62 MΩ", "insulation", 62e6, null, "62 MΩ"],
  ])("%s", (typed, measured, value, atVolts, text) => {
    expect(readReading(typed, "0.1 µF", "capacitor")).toMatchObject({ measured, value, atVolts, text });
  });
});

describe("several readings of one part", () => {
  test("stand in one cell, and one of the same quantity takes the place of the last", () => {
    const cell = "0.052 µF; 3 µA";
    const known = readReadings(cell, "0.05 µF", "capacitor");
    expect(known.map(({ measured }) => measured)).toEqual(["capacitance", "leakage"]);
    expect(joinReadings(known, [readReading("2 µA", null, "capacitor")])).toBe("0.052 µF; 2 µA");
    expect(joinReadings(known, [readReading("1.4 Ω", null, "capacitor")])).toBe("0.052 µF; 3 µA; 1.4 Ω");
  });
});

describe("a bare figure in the printed unit", () => {
  test.each<[string, string, number, number | null, string]>([
    ["980", "1 M", 1e6, 980e3, "980 M would be far off, 980 k near"],
    ["1000", "47 k", 47e3, null, "no unit puts 1000 near 47 k: 21 times off is a bad part, not a slip"],
    ["612", "470 k", 470e3, null, "near already"],
    ["980 M", "1 M", 1e6, null, "its own unit was meant"],
  ])("%s on %s: %s", (typed, printed, nominal, slip) => {
    expect(slipOf(readReading(typed, printed, "resistor"), nominal)).toBe(slip);
  });
});
