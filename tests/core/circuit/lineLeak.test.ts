import fc from "fast-check";
import { expect, test } from "vitest";
import { close, faradsForLeak, lineLeak } from "../../../src/core/index.js";

const positive = fc.double({ min: 1e-10, max: 1e-5, noNaN: true });

test("a floating-ground capacitor of 0.2 µF passes 9.3 mA at 123 V and 60 Hz even when perfect", () => {
  expect(lineLeak({ farads: 0.2e-6, volts: 123, hertz: 60 })).toBeCloseTo(0.00927, 5); // 377 x 0.2e-6 x 123
});

test("the capacitor for a current passes that current", () => {
  fc.assert(
    fc.property(positive, (amperes) => {
      const farads = faradsForLeak({ amperes, volts: 120, hertz: 60 });
      expect(close(lineLeak({ farads, volts: 120, hertz: 60 }), amperes)).toBe(true);
    }),
  );
});

test("twice the farads, volts or hertz pass twice the current", () => {
  fc.assert(
    fc.property(positive, (farads) => {
      const once = lineLeak({ farads, volts: 120, hertz: 60 });
      expect(close(lineLeak({ farads: 2 * farads, volts: 120, hertz: 60 }), 2 * once)).toBe(true);
      expect(close(lineLeak({ farads, volts: 240, hertz: 60 }), 2 * once)).toBe(true);
      expect(close(lineLeak({ farads, volts: 120, hertz: 120 }), 2 * once)).toBe(true);
    }),
  );
});
