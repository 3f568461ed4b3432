import fc from "fast-check";
import { expect, test } from "vitest";
import { close, rippleOf } from "../../../src/core/index.js";

const supply = { peakVolts: 350, amperes: 0.06, farads: 20e-6, hertz: 60, fullWave: true };

test("60 mA from 20 µF on a full-wave 60 Hz supply ripple by 25 V peak to peak", () => {
  const ripple = rippleOf(supply); // 0.06 / (120 x 20e-6)
  expect(ripple.peakToPeakVolts).toBeCloseTo(25, 9);
  expect(ripple.rmsVolts).toBeCloseTo(7.217, 3); // 25 / sqrt 12
  expect(ripple.meanVolts).toBeCloseTo(337.5, 9);
});

test("half wave ripples twice as much, twice the farads half as much", () => {
  const farads = fc.double({ min: 1e-6, max: 1e-3, noNaN: true });
  fc.assert(
    fc.property(farads, (each) => {
      const full = rippleOf({ ...supply, farads: each }).peakToPeakVolts;
      expect(close(rippleOf({ ...supply, farads: each, fullWave: false }).peakToPeakVolts, 2 * full)).toBe(true);
      expect(close(rippleOf({ ...supply, farads: 2 * each }).peakToPeakVolts, full / 2)).toBe(true);
    }),
  );
});

test("the estimate says how it was made", () => {
  expect(rippleOf(supply).method).toContain("straight-line discharge");
});

/** The same supply in small steps: an ideal rectifier, a resistor for a load, the third period taken. */
function byStepping(ohms: number): { peakToPeak: number } {
  const stepsPerPeriod = 20_000;
  const period = 1 / supply.hertz;
  let volts = supply.peakVolts;
  let [lowest, highest] = [Number.POSITIVE_INFINITY, 0];
  for (let step = 0; step < 3 * stepsPerPeriod; step++) {
    const wave = Math.abs(supply.peakVolts * Math.cos((2 * Math.PI * step) / stepsPerPeriod));
    volts = Math.max(wave, volts * Math.exp(-period / stepsPerPeriod / (ohms * supply.farads)));
    if (step < 2 * stepsPerPeriod) continue;
    lowest = Math.min(lowest, volts);
    highest = Math.max(highest, volts);
  }
  return { peakToPeak: highest - lowest };
}

test("against a supply worked in small steps it reads 5 to 30 % high, never low", () => {
  for (const farads of [10e-6, 20e-6, 40e-6]) {
    const estimate = rippleOf({ ...supply, farads }).peakToPeakVolts;
    const stepped = byStepping(supply.peakVolts / supply.amperes).peakToPeak * (supply.farads / farads);
    expect(estimate / stepped).toBeGreaterThan(1.05);
    expect(estimate / stepped).toBeLessThan(1.3);
  }
});
