import { all, create, type Unit } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  bleedTime,
  close,
  criticalOhms,
  esrLimit,
  faradsForLeak,
  gridShift,
  heaterDrop,
  insulationFor,
  lineLeak,
  loadOf,
  maxVolts,
  rippleOf,
  seleniumResistor,
  storedEnergy,
} from "../../../src/core/index.js";

const math = create(all!);

/** What a general units library makes of the same formula, in the unit named; it throws when the dimensions do not fit. */
const byUnits = (formula: string, unit: string) => (math.evaluate(formula) as Unit).toNumber(unit);

/** Figures of this project beside the same formula worked by mathjs with units. */
describe("results have the dimension they claim", () => {
  test.each([
    // what, ours, formula, unit
    ["volts a resistor bears", maxVolts({ ohms: 1000, watts: 0.5 }), "sqrt(0.5 W * 1000 ohm)", "V"],
    ["critical resistance", criticalOhms({ watts: 0.5, bodyVolts: 350 }), "(350 V)^2 / (0.5 W)", "ohm"],
    ["watts of a load", loadOf({ ohms: 220, watts: 1 }, { volts: 10 }).watts, "(10 V)^2 / (220 ohm)", "W"],
    ["line leakage", lineLeak({ farads: 1e-8, volts: 120, hertz: 60 }), "2 pi * 60 Hz * 0.01 uF * 120 V", "A"],
    ["farads for it", faradsForLeak({ amperes: 5e-4, volts: 120, hertz: 60 }), "0.5 mA / (2 pi * 60 Hz * 120 V)", "F"],
    ["stored energy", storedEnergy({ farads: 20e-6, volts: 450 }), "0.5 * 20 uF * (450 V)^2", "J"],
    [
      "bleed time",
      bleedTime({ farads: 20e-6, ohms: 1e5, fromVolts: 450, toVolts: 50 }),
      "100 kohm * 20 uF * log(450 V / (50 V))",
      "s",
    ],
    [
      "grid shift",
      gridShift({ volts: 250, insulationOhms: 1e8, gridOhms: 470e3 }),
      "250 V / (100 Mohm + 470 kohm) * 470 kohm",
      "V",
    ],
    [
      "insulation for it",
      insulationFor({ volts: 250, gridOhms: 470e3, shiftVolts: 0.5 }),
      "(250 V - 0.5 V) / (0.5 V / (470 kohm))",
      "ohm",
    ],
    [
      "ripple",
      rippleOf({ peakVolts: 350, amperes: 0.06, farads: 20e-6, hertz: 60, fullWave: true }).peakToPeakVolts,
      "60 mA / (120 Hz * 20 uF)",
      "V",
    ],
    [
      "series resistance",
      esrLimit({ farads: 20e-6, hertz: 120, dissipation: 0.15 }),
      "0.15 / (2 pi * 120 Hz * 20 uF)",
      "ohm",
    ],
    [
      "heater dropper",
      heaterDrop({ lineVolts: 117, heaterVolts: 69, amperes: 0.3, hertz: 60 }, "resistor").ohms!,
      "(117 V - 69 V) / (0.3 A)",
      "ohm",
    ],
    [
      "heater capacitor",
      heaterDrop({ lineVolts: 117, heaterVolts: 69, amperes: 0.3, hertz: 60 }, "capacitor").farads!,
      "0.3 A / (2 pi * 60 Hz * sqrt((117 V)^2 - (69 V)^2))",
      "F",
    ],
    ["selenium's resistor", seleniumResistor({ plates: 5, amperes: 0.065 }).ohms, "(5 * 1 V - 0.7 V) / (65 mA)", "ohm"],
  ])("%s", (_what, ours, formula, unit) => {
    expect(close(ours, byUnits(formula, unit))).toBe(true);
  });
});
