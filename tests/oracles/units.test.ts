import { divide, type MathType, multiply, pow, type Unit, unit } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  bleedTime,
  criticalOhms,
  lineLeak,
  maxVolts,
  readMeasure,
  readValue,
  rippleOf,
  storedEnergy,
} from "../../src/core/index.js";

/** A product of units and numbers. */
const times = (...factors: MathType[]) => factors.reduce((product, factor) => multiply(product, factor));

/** mathjs carries the units along, so that a wrong power or a lost factor shows as another dimension. */
describe("results have the dimension that their name says", () => {
  test.each([
    [
      "volts a resistor may bear",
      maxVolts({ ohms: 1e5, watts: 0.5 }),
      pow(times(unit("0.5 W"), unit("100 kohm")) as Unit, 0.5),
      "V",
    ],
    [
      "ohms from which the body decides",
      criticalOhms({ watts: 0.5, bodyVolts: 350 }),
      divide(pow(unit("350 V"), 2), unit("0.5 W")),
      "ohm",
    ],
    [
      "energy in a capacitor",
      storedEnergy({ farads: 20e-6, volts: 450 }),
      times(unit("20 uF"), pow(unit("450 V"), 2), 0.5),
      "J",
    ],
    [
      "a time constant: the time to fall to 1/e",
      bleedTime({ farads: 20e-6, ohms: 1e5, fromVolts: Math.E, toVolts: 1 }),
      times(unit("20 uF"), unit("100 kohm")),
      "s",
    ],
    [
      "current through a line bypass",
      lineLeak({ farads: 10e-9, volts: 120, hertz: 60 }),
      times(unit("10 nF"), unit("120 V"), unit("60 Hz"), 2 * Math.PI),
      "A",
    ],
    [
      "ripple",
      rippleOf({ peakVolts: 350, amperes: 0.06, farads: 20e-6, hertz: 60, fullWave: true }).peakToPeakVolts,
      divide(unit("60 mA"), times(unit("120 Hz"), unit("20 uF"))),
      "V",
    ],
  ] as const)("%s", (...[, ours, theirs, name]) => {
    expect(ours / (theirs as Unit).toNumber(name)).toBeCloseTo(1, 9);
  });
});

describe("prefixes mean what mathjs takes them to mean", () => {
  test.each([
    ["4.7 kohm", "ohm"],
    ["2.2 Mohm", "ohm"],
    ["47 nF", "F"],
    ["0.1 uF", "F"],
    ["220 pF", "F"],
    ["2.5 mH", "H"],
    ["330 uH", "H"],
  ])("%s in %s", (text, name) => expect(readValue(text).value / unit(text).toNumber(name)).toBeCloseTo(1, 12));

  test.each([
    ["250 mW", "watt", "W"],
    ["1.6 kV", "volt", "V"],
    ["50 mA", "ampere", "A"],
    ["60 Hz", "hertz", "Hz"],
    ["3 cm", "metre", "m"],
  ] as const)("%s as %s", (...[text, measure, name]) => {
    expect(readMeasure(text, measure) / unit(text).toNumber(name)).toBeCloseTo(1, 12);
  });
});
