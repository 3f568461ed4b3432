import fc from "fast-check";
import { expect, test } from "vitest";
import { close, seleniumResistor } from "../../../src/core/index.js";

test("the resistor drops what the stack did, less what silicon does", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.double({ min: 0.01, max: 1, noNaN: true }), (plates, amperes) => {
      const { ohms, watts, dropVolts } = seleniumResistor({ plates, amperes });
      expect(close(ohms * amperes + 0.7, plates)).toBe(true);
      expect(close(watts, dropVolts * amperes)).toBe(true);
    }),
  );
});

test("a stack that drops no more than silicon needs no resistor, and that is said", () => {
  expect(() => seleniumResistor({ plates: 1, amperes: 0.1, voltsPerPlate: 0.5 })).toThrow(
    "more volts than the silicon",
  );
});
