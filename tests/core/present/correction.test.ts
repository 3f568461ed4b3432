import { describe, expect, test } from "vitest";
import { cellsOfCorrection } from "../../../src/core/present/correction.js";

describe("what a person reads on the page where we read something else", () => {
  test.each([
    // typed, kind, cells, why
    [{ watts: "1 W" }, "resistor", { watts: 1 }, "TW was 1 W"],
    [{ watts: "1/2" }, "resistor", { watts: 0.5 }, "a bare figure is watts here"],
    [{ value: "470,000 ohms" }, "resistor", { value: "470 k", size: 470_000 }, "as the list prints it"],
    [
      { value: ".05 mf", volts: "600" },
      "capacitor",
      { value: "0.05 µF", size: 5e-8, volts: 600 },
      "two figures at once",
    ],
    [{ value: "3 to 30 mmf" }, "capacitor", { value: "3 pF to 30 pF", size: 30e-12 }, "a trimmer's range"],
    [{ tolerance: "10%" }, "resistor", { tolerance: "±10 %" }, "in the sheet's own writing"],
    [{ volts: "" }, "capacitor", { volts: null }, "nothing is printed there"],
  ] as const)("%j of a %s is %j: %s", (typed, kind, cells, _why) => {
    expect(cellsOfCorrection(typed, kind)).toEqual({ ...cells, unsure: null });
  });

  test.each([
    [{ watts: "some" }, /some/],
    [{ value: "4k7x" }, /4k7x/],
  ])("%j is refused in words", (typed, words) => {
    expect(() => cellsOfCorrection(typed, "resistor")).toThrow(words);
  });
});
