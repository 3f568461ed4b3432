import { describe, expect, test } from "vitest";
import type { FigureName, OfPart } from "../../../src/core/index.js";
import { givenOf } from "../../../src/start/cases/given.js";
import { labelsOf } from "../../../src/start/cases/label.js";
import { numberIn } from "../../../src/start/cases/numberIn.js";

const SETTINGS = {
  line_now_V: 123,
  line_hz: 60,
  policy: "trade",
  nearest_by: "ratio",
  r_drift_rule: "max(marked, general)",
};
const RESISTOR: OfPart = { kind: "resistor", className: "carbon_comp" };
const CAPACITOR: OfPart = { kind: "capacitor", className: "paper_wax" };

describe("the figures of a case, whatever they are called", () => {
  test.each<[string, unknown, FigureName, number, string, Partial<OfPart>?]>([
    ["vActual", 12, "volts", 12, "a name of its own"],
    ["V_across", "210 V", "volts", 210, "a text with its unit"],
    ["peakV", 420, "warmUpVolts", 420, "no thousands of volts behind pea"],
    ["warmupPeakV", 172, "warmUpVolts", 172, "the same with a longer name"],
    ["focus_kV", 4.5, "volts", 4500, "thousands where kV stands by itself"],
    ["stringA", 0.15, "amps", 0.15, "the unit tells current from volts", { kind: "resistor", className: "ballast" }],
    ["stringV", 72.8, "stringVolts", 72.8, "and volts from current", { kind: "resistor", className: "ballast" }],
    ["load_mA", 90, "loadAmps", 0.09, "thousandths"],
    ["Ik_mA", 40, "amps", 0.04, "a cathode's current"],
    ["insMohm", 62, "insulation", 62e6, "M is millions of ohms"],
    ["insulation", "62 MΩ", "insulation", 62e6, "the same as text"],
    ["limitMohm", 50, "insulationLimit", 50e6, "the limit is no reading"],
    ["reading", "612K", "reading", 612e3, "the trade's K", { kind: "resistor" }],
    ["reading", "62 MΩ", "insulation", 62e6, "ohms of a capacitor are its insulation"],
    ["rectifierMax_uF", 32, "rectifierFarads", 32e-6, "microfarads"],
    ["leakUa", 3, "leakage", 3e-6, "millionths"],
    ["ESR_ohm", 6, "esr", 6, "capitals before the stroke"],
    ["ambientC", 85, "celsius", 85, "C is degrees behind ambient"],
    ["plates", 6, "plates", 6, "a count"],
    ["tolPct", 5, "tolerance", 0.05, "percent become a ratio"],
    ["tubeHeaters_V", 12.6, "stringVolts", 12.6, "two words of one idea", { kind: "resistor", className: "ballast" }],
    ["heater_mA", 300, "amps", 0.3, "the heaters' current", { kind: "resistor", className: "ballast" }],
    ["Rrev", "12K", "reverseOhms", 12e3, "a letter for ohms", { kind: "rectifier" }],
    ["startDropV", 4.3, "dropVolts", 4.3, "of a stack", { kind: "rectifier", className: "selenium" }],
    ["drop_V", 160, "volts", 160, "of a resistor the same word is what stands across it", { kind: "resistor" }],
    ["vCoupled", 250, "volts", 250, "a word nobody knows, with its unit"],
    ["Rgrid_k", 500, "gridOhms", 500e3, "a letter that leans on its word"],
    ["dV", 0.5, "gridShiftVolts", 0.5, "what a leak may move the grid by"],
    ["meterAcc", 1.5, "accuracy", 0.015, "percent without the word"],
  ])("%s %s is %s %d: %s", (key, value, name, expected, _why, of = {}) => {
    const { figures } = givenOf({ [key]: value }, "", { ...CAPACITOR, ...of }, SETTINGS);
    expect([...figures.keys()]).toEqual([name]);
    expect(figures.get(name)?.[0]).toBeCloseTo(expected, 12);
  });

  test("a figure one level deeper keeps the name above it", () => {
    const { figures, rest } = givenOf({ reading: { ohms: "612K", inCircuit: true } }, "", RESISTOR, SETTINGS);
    expect(figures.get("reading")).toEqual([612e3]);
    expect(rest.inCircuit).toBe(true);
  });

  test("settings are told by their keys or their short names, choices in their own words", () => {
    const { settings } = givenOf(
      { lineV: "117 V", hz: 50, policy: "Conservator", nearestBy: "never below", driftRule: "marked" },
      "",
      CAPACITOR,
      SETTINGS,
    );
    expect(settings).toEqual({
      line_now_V: 117,
      line_hz: 50,
      policy: "conservator",
      nearest_by: "not-below",
      r_drift_rule: "marked",
    });
  });

  test("what no name fits is left over, not guessed", () => {
    const { figures, rest } = givenOf({ colourOfTheDial: 3, reading: "open" }, "", CAPACITOR, SETTINGS);
    expect([...figures]).toEqual([]);
    expect(rest).toEqual({ colourOfTheDial: 3, reading: "open" });
  });
});

describe("what the context states", () => {
  test("stands in where no label gives it, and a label outranks it", () => {
    const context = "plate at 180 V, 1 meg grid resistor follows";
    const { figures } = givenOf({ gridOhms: 470e3 }, context, CAPACITOR, SETTINGS);
    expect(figures.get("nodeVolts")).toEqual([180]);
    expect(figures.get("gridOhms")).toEqual([470e3]);
  });
});

describe("a sentence under a label", () => {
  test("states its figures behind the label's words", () => {
    const { figures } = givenOf({ bench: "62 MΩ at 400 V, 0.108 µF" }, "", CAPACITOR, SETTINGS);
    expect(Object.fromEntries(figures)).toEqual({ insulation: [62e6], testVolts: [400], reading: [0.108e-6] });
  });
});

describe("units", () => {
  test.each([
    ["~ 4.7 k", 4700],
    [".05 mf", 5e-8],
    ["0.5 mA", 5e-4],
  ])("%s is %d in base units", (text, expected) => {
    expect(numberIn(text)?.number).toBeCloseTo(expected, 12);
  });

  test("a text that is no figure or several is none", () => {
    expect(numberIn("soft start")).toBeNull();
    expect(numberIn("62 MΩ at 400 V")).toBeNull();
  });

  test("a label is read without each unit that it may end in, the plainest first", () => {
    expect(labelsOf("peakV").map(({ words, measure }) => `${words.join(" ")} ${measure}`)).toEqual([
      "peak volt",
      "pea volt",
      "peak v volt",
    ]);
    expect(labelsOf("mA")[0]).toEqual({ words: ["current"], measure: "ampere", factor: 1e-3, isBare: true });
    expect(labelsOf("role")).toEqual([{ words: ["role"], measure: null, factor: 1, isBare: false }]);
  });
});
