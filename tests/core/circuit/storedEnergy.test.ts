import fc from "fast-check";
import { expect, test } from "vitest";
import { close, storedEnergy, storedEnergyText } from "../../../src/core/index.js";

test("twice the volts hold four times the energy", () => {
  const positive = fc.double({ min: 1e-9, max: 1e3, noNaN: true });
  fc.assert(
    fc.property(positive, positive, (farads, volts) => {
      expect(close(storedEnergy({ farads, volts: 2 * volts }), 4 * storedEnergy({ farads, volts }))).toBe(true);
    }),
  );
});

test("the words end in what must follow whatever the figure says", () => {
  expect(storedEnergyText({ farads: 20e-6, volts: 450 })).toBe("2.03 J at 450 V: discharge it, then prove 0 V");
  expect(storedEnergyText({ farads: 1e-9, volts: 0 })).toMatch(/then prove 0 V$/);
});
