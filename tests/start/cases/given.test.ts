import { describe, expect, test } from "vitest";
import { givenOf } from "../../../src/start/cases/given.js";
import type { GivenName } from "../../../src/start/cases/givenNames.js";
import { figureOf, unitOf } from "../../../src/start/cases/givenUnits.js";

const SETTINGS = { line_now_V: 123, line_hz: 60, policy: "trade", nearest_by: "ratio" };

describe("the figures of a case, whatever they are called", () => {
  test.each<[string, unknown, GivenName, number, string]>([
    ["vActual", 12, "volts", 12, "a name of its own"],
    ["V_across", "210 V", "volts", 210, "a text with its unit"],
    ["peakV", 420, "warmUpVolts", 420, "no thousands of volts behind pea"],
    ["warmupPeakV", 172, "warmUpVolts", 172, "the same with a longer name"],
    ["focus_kV", 4.5, "volts", 4500, "thousands where kV stands by itself"],
    ["stringA", 0.15, "amps", 0.15, "the unit tells current from volts"],
    ["stringV", 72.8, "stringVolts", 72.8, "and volts from current"],
    ["load_mA", 90, "loadAmps", 0.09, "thousandths"],
    ["Ik_mA", 40, "amps", 0.04, "a cathode's current"],
    ["insMohm", 62, "insulation", 62e6, "M is millions of ohms"],
    ["insulation", "62 MΩ", "insulation", 62e6, "the same as text"],
    ["limitMohm", 50, "insulationLimit", 50e6, "the limit is no reading"],
    ["reading", "612K", "reading", 612e3, "the trade's K"],
    ["rectifierMax_uF", 32, "rectifierFarads", 32e-6, "microfarads"],
    ["leakUa", 3, "leakage", 3e-6, "millionths"],
    ["ESR_ohm", 6, "esr", 6, "capitals before the stroke"],
    ["ambientC", 85, "celsius", 85, "C is degrees behind ambient"],
    ["plates", 6, "plates", 6, "a count"],
    ["tolPct", 5, "tolerance", 0.05, "percent become a ratio"],
  ])("%s %s is %s %d: %s", (key, value, name, expected) => {
    const { figures } = givenOf({ [key]: value }, SETTINGS);
    expect([...figures.keys()]).toEqual([name]);
    expect(figures.get(name)?.[0]).toBeCloseTo(expected, 12);
  });

  test("a figure one level deeper keeps the name above it", () => {
    const { figures, rest } = givenOf({ reading: { ohms: "612K", inCircuit: true } }, SETTINGS);
    expect(figures.get("reading")).toEqual([612e3]);
    expect(rest.inCircuit).toBe(true);
  });

  test("settings are told by their keys or their short names, choices in their own words", () => {
    const { settings } = givenOf({ lineV: "117 V", hz: 50, policy: "Conservator", nearestBy: "never below" }, SETTINGS);
    expect(settings).toEqual({ line_now_V: 117, line_hz: 50, policy: "conservator", nearest_by: "not-below" });
  });

  test("what no name fits is left over, not guessed", () => {
    const { figures, rest } = givenOf({ colourOfTheDial: 3, reading: "open" }, SETTINGS);
    expect([...figures]).toEqual([]);
    expect(rest).toEqual({ colourOfTheDial: 3, reading: "open" });
  });
});

describe("units", () => {
  test.each([
    ["~ 4.7 k", 4700],
    [".05 mf", 5e-8],
    ["0,5 mA", 5e-4],
    ["-20 %", -0.2],
  ])("%s is %d in base units", (text, expected) => {
    expect(figureOf(text)?.number).toBeCloseTo(expected, 12);
  });

  test("a text that is no figure is none", () => {
    expect(figureOf("soft start")).toBeNull();
  });

  test("the longest unit at the end of a key is its unit", () => {
    expect(unitOf("mA")).toEqual({ measure: "amps", factor: 1e-3 });
    expect(unitOf("role")).toBeNull();
  });
});
