import fc from "fast-check";
import { expect, test } from "vitest";
import { close, gridShift, insulationFor, leakByCharge } from "../../../src/core/index.js";

test("the trade's 200 megohms is a rule of half a volt: 250 V into 470 k ask for 235 M", () => {
  expect(insulationFor({ volts: 250, gridOhms: 470_000, shiftVolts: 0.5 }) / 1e6).toBeCloseTo(234.5, 1);
});

test("10 µA into 500 k would lift the grid by nearly 5 V", () => {
  // 250 V through 25 M drive 9.8 µA, less what the grid resistor itself adds to the path
  expect(gridShift({ volts: 250, insulationOhms: 24.5e6, gridOhms: 500_000 })).toBeCloseTo(5, 9);
});

test("the insulation for a shift gives that shift", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 10, noNaN: true }), (shiftVolts) => {
      const insulationOhms = insulationFor({ volts: 250, gridOhms: 470_000, shiftVolts });
      expect(close(gridShift({ volts: 250, insulationOhms, gridOhms: 470_000 }), shiftVolts)).toBe(true);
    }),
  );
});

test("a stockist's limit of 1968, 0.05 CV + 250 µA, allows 700 µA for 20 µF 450 V", () => {
  expect(leakByCharge({ farads: 20e-6, volts: 450 }, { perCoulomb: 0.05, plusAmperes: 250e-6 })).toBeCloseTo(700e-6, 9);
});
