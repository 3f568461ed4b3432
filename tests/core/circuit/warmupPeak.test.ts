import fc from "fast-check";
import { expect, test } from "vitest";
import { warmupPeak } from "../../../src/core/index.js";

test("a 350-0-350 V winding for 117 V peaks at 520 V on a line of 123 V: more than a 500 V part bears", () => {
  // 1.41421 x 350 x 123 / 117
  expect(warmupPeak({ windingVolts: 350, lineVolts: 123, designVolts: 117 })).toBeCloseTo(520.36, 2);
});

test("at the line it was wound for the peak is 1.414 times the winding", () => {
  expect(warmupPeak({ windingVolts: 385, lineVolts: 117, designVolts: 117 })).toBeCloseTo(544.47, 2);
});

test("the peak follows the winding and the line, and counts against the line it was wound for", () => {
  const volts = fc.double({ min: 1, max: 1000, noNaN: true });
  fc.assert(
    fc.property(
      volts,
      volts,
      volts,
      fc.double({ min: 0.5, max: 2, noNaN: true }),
      (windingVolts, lineVolts, designVolts, k) => {
        const supply = { windingVolts, lineVolts, designVolts };
        const peak = warmupPeak(supply);
        expect(warmupPeak({ ...supply, windingVolts: k * windingVolts }) / peak).toBeCloseTo(k, 9);
        expect(warmupPeak({ ...supply, lineVolts: k * lineVolts }) / peak).toBeCloseTo(k, 9);
        expect(warmupPeak({ ...supply, designVolts: k * designVolts }) / peak).toBeCloseTo(1 / k, 9);
      },
    ),
  );
});
