import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { close, heaterDrop } from "../../../src/core/index.js";

const string = { lineVolts: 117, heaterVolts: 69, amperes: 0.3, hertz: 60 };

describe("what drops the line to a string of heaters", () => {
  test("a resistor takes the rest of the volts and burns them", () => {
    const drop = heaterDrop(string, "resistor");
    expect(drop.ohms).toBeCloseTo(160, 9); // (117 - 69) / 0.3
    expect(drop.watts).toBeCloseTo(14.4, 9); // 48 V x 0.3 A
    expect(drop.farads).toBeNull();
  });

  test("behind a diode the line's rms is 0.707 of it, not half", () => {
    expect(heaterDrop(string, "diode").ohms).toBeCloseTo((117 * Math.SQRT1_2 - 69) / 0.3, 9);
  });

  test("a capacitor's volts and the heaters' make the line as the sides of a right angle do", () => {
    const drop = heaterDrop(string, "capacitor");
    expect(Math.hypot(drop.dropVolts, string.heaterVolts)).toBeCloseTo(117, 9);
    expect(2 * Math.PI * 60 * drop.farads! * drop.dropVolts).toBeCloseTo(0.3, 12);
    expect(drop.watts).toBeNull();
  });

  test("heaters that need more than there is are refused, with what this way gives", () => {
    expect(() => heaterDrop({ ...string, heaterVolts: 90 }, "diode")).toThrow("82.73 V at most");
    expect(() => heaterDrop({ ...string, heaterVolts: 117 }, "resistor")).toThrow("117.0 V at most");
  });

  test("the dropper and the string together take the whole line", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 116, noNaN: true }), (heaterVolts) => {
        const { ohms } = heaterDrop({ ...string, heaterVolts }, "resistor");
        expect(close(ohms! * 0.3 + heaterVolts, 117)).toBe(true);
      }),
    );
  });
});
