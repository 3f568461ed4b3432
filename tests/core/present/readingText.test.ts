import { describe, expect, test } from "vitest";
import { type Kind, readReading } from "../../../src/core/index.js";

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
});
