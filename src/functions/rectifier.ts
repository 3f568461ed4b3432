import * as core from "../core/index.js";
import { choice, count, rating } from "./ask.js";
import { spill } from "./cell.js";

/**
 * Whether a rectifier uses one or both half waves.
 * @customenum {string}
 */
export enum Wave {
  Full = "full",
  Half = "half",
}

const WAVES = ["full", "half"] as const;

/**
 * The ripple in volts on the first filter capacitor, estimated by an even discharge over the whole period: never low, and high by 15 to 20 % for half wave, 35 to 55 % for full wave, against a circuit simulator.
 * @customfunction RIPPLE_OF
 * @helpurl reference.html#RIPPLE_OF
 * @param amperes The load's current, such as 0.06 or 60 mA.
 * @param farads The capacitor: a number in farads, or text such as 20 uF.
 * @param peakVolts The peak of the rectified wave in volts.
 * @param hertz The line's frequency: 60 hertz when left out.
 * @param wave full (when left out) or half: how many half waves the rectifier uses.
 * @returns Volts peak to peak, volts rms, mean volts, and the method in words.
 * @example LUG.RIPPLE_OF(0.06, "20 uF", 350) -> {25, 7.21687836, 337.5, "straight-line discharge over the whole period: reads high by the time the rectifier conducts"}
 */
export function rippleOf(
  amperes: unknown[][],
  farads: unknown[][],
  peakVolts: unknown[][],
  hertz?: unknown[][],
  wave?: Wave[][],
): unknown[][] {
  return spill(
    [
      rating(amperes, "amperes", "ampere"),
      rating(farads, "farads", "farad"),
      rating(peakVolts, "peakVolts", "volt"),
      rating(hertz, "hertz", "hertz", Number(core.defaultSettings.line_hz)),
      choice(wave, "wave", WAVES, "full"),
    ],
    (amperes, farads, peakVolts, hertz, wave) => {
      const ripple = core.rippleOf({ amperes, farads, peakVolts, hertz, fullWave: wave === "full" });
      return [[ripple.peakToPeakVolts, ripple.rmsVolts, ripple.meanVolts, ripple.method]];
    },
  );
}

/**
 * The resistor in ohms that makes up for a selenium stack's drop when silicon takes its place: a value to start from.
 * @customfunction SELENIUM_RESISTOR
 * @helpurl reference.html#SELENIUM_RESISTOR
 * @param plates How many plates stand in series.
 * @param amperes The mean current, such as 0.065 or 65 mA.
 * @param voltsPerPlate What each plate loses: 1 V when left out, more when aged.
 * @param siliconVolts What the silicon loses: 0.7 V when left out.
 * @returns Ohms, then the watts at the mean current; ripple heats it more, so take it larger. Measure B+ at today's line for the final value.
 * @example LUG.SELENIUM_RESISTOR(5, 0.065) -> {66.1538462, 0.2795}
 */
export function seleniumResistor(
  plates: unknown[][],
  amperes: unknown[][],
  voltsPerPlate?: unknown[][],
  siliconVolts?: unknown[][],
): unknown[][] {
  return spill(
    [
      count(plates, "plates"),
      rating(amperes, "amperes", "ampere"),
      rating(voltsPerPlate, "voltsPerPlate", "volt", 1),
      rating(siliconVolts, "siliconVolts", "volt", 0.7),
    ],
    (plates, amperes, voltsPerPlate, siliconVolts) => {
      const { ohms, watts } = core.seleniumResistor({ plates, amperes, voltsPerPlate, siliconVolts });
      return [[ohms, watts]];
    },
  );
}
