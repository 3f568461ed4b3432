import fc from "fast-check";
import { expect, test } from "vitest";
import { bleedTime, bleedTimeText, close, voltsAfter } from "../../../src/core/index.js";

const filter = { farads: 20e-6, ohms: 100_000, fromVolts: 450 };

test("after one time constant 36.8 % of the volts are left", () => {
  expect(voltsAfter({ ...filter, seconds: 2 }) / 450).toBeCloseTo(0.36788, 5); // 1/e
});

test("the volts left after the bleed time are the volts asked for", () => {
  const volts = fc.double({ min: 0.1, max: 450, noNaN: true });
  fc.assert(
    fc.property(volts, (toVolts) => {
      const seconds = bleedTime({ ...filter, toVolts });
      expect(close(voltsAfter({ ...filter, seconds }), toVolts)).toBe(true);
    }),
  );
});

test("a lower end takes longer, and one that is already reached takes no time", () => {
  expect(bleedTime({ ...filter, toVolts: 10 })).toBeGreaterThan(bleedTime({ ...filter, toVolts: 50 }));
  expect(bleedTime({ ...filter, toVolts: 500 })).toBe(0);
});

test("zero volts are never reached by waiting, and that is said", () => {
  expect(() => bleedTime({ ...filter, toVolts: 0 })).toThrow("zero is never reached by waiting");
});

test("the words end in what must follow whatever the figure says", () => {
  expect(bleedTimeText({ ...filter, toVolts: 50 })).toBe("4.4 s to 50 V: wait, then prove 0 V");
});
