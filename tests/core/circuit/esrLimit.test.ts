import fc from "fast-check";
import { expect, test } from "vitest";
import { close, esrLimit } from "../../../src/core/index.js";

test("20 µF at 120 Hz with a dissipation factor of 15 % has 9.95 ohms", () => {
  expect(esrLimit({ farads: 20e-6, hertz: 120, dissipation: 0.15 })).toBeCloseTo(9.947, 3); // 66.31 x 0.15
});

test("twice the farads allow half the ohms", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-9, max: 1e-2, noNaN: true }), (farads) => {
      const once = esrLimit({ farads, hertz: 120, dissipation: 0.1 });
      expect(close(esrLimit({ farads: 2 * farads, hertz: 120, dissipation: 0.1 }), once / 2)).toBe(true);
    }),
  );
});
