import { describe, expect, test } from "vitest";
import { type FigureName, type OfPart, saidFigures } from "../../../../src/core/index.js";

const PAPER: OfPart = { kind: "capacitor", className: "paper_wax" };
const RESISTOR: OfPart = { kind: "resistor", className: "carbon_comp" };
const STACK: OfPart = { kind: "rectifier", className: "selenium" };
const CRYSTAL: OfPart = { kind: "rectifier", className: "germanium_diode" };
const BALLAST: OfPart = { kind: "resistor", className: "ballast" };

type Told = Partial<Record<FigureName, readonly number[]>>;

describe("figures that a text states beside a part, by their words and units", () => {
  test.each<[string, OfPart, Told, string]>([
    ["15 V on it", PAPER, { volts: [15] }, "plain volts stand on the part"],
    ["B+ 250 V, warm-up 310 V", PAPER, { nodeVolts: [250], warmUpVolts: [310] }, "each figure has its own words"],
    ["62 MΩ at 400 V, 0.108 µF", PAPER, { insulation: [62e6], testVolts: [400], reading: [0.108e-6] }, "bench notes"],
    ["leaks 4 uA at 300 V", PAPER, { leakage: [4e-6], testVolts: [300] }, "a leak at its volts"],
    ["plate at 180 V, 1 meg grid resistor follows", PAPER, { nodeVolts: [180], gridOhms: [1e6] }, "its neighbour"],
    ["220K beside it", PAPER, {}, "the ohms of a neighbour are nobody's reading"],
    ["260 V at one end, 100 V at the screen", RESISTOR, { nodeVolts: [260, 100] }, "both ends"],
    [
      "600 V peak pulses, 0.4 W average",
      RESISTOR,
      { pulseVolts: [600], lostWatts: [0.4] },
      "a pulse is no steady volt",
    ],
    ["4.8 kV across the string", RESISTOR, { volts: [4800] }, "a string of resistors"],
    ["section currents 12, 30, 60 mA", RESISTOR, { amps: [0.012, 0.03, 0.06] }, "a list shares its unit"],
    ["air at 60 °C", RESISTOR, { celsius: [60] }, "degrees"],
    ["100 V range; reads 1.012 M, meter 0.3 %", RESISTOR, { reading: [1.012e6], accuracy: [0.003] }, "no range"],
    ["six plates; load 85 mA", STACK, { plates: [6], loadAmps: [0.085] }, "a count in words"],
    ["documented B+ 118 V at 117 V line", STACK, { nodeVolts: [118], lineDesignVolts: [117] }, "of the documents"],
    ["drops 0.31 V, 35 K reverse", CRYSTAL, { forwardVolts: [0.31], reverseOhms: [35e3] }, "a diode drops forwards"],
    ["six heaters, 62.6 volts in all, 0.3 amp", BALLAST, { stringVolts: [62.6], amps: [0.3] }, "the string"],
  ])("%s", (text, of, expected) => {
    expect(Object.fromEntries(saidFigures(text, of))).toEqual(expected);
  });
});
