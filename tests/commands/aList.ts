import { DEFAULTS_IN_FORCE, type DocumentReading, fact, type Part } from "../../src/core/index.js";

/** A resistor of a made-up list. */
export function resistor(designator: string, section: string, ohms: number): Part {
  return {
    id: "",
    document: "",
    section,
    designator,
    parent: null,
    suffix: null,
    kind: "resistor",
    printed: `${designator} ${ohms / 1000}K`,
    value: fact(ohms, "line", "line 3"),
    span: null,
    tolerance: fact({ minus: 0.2, plus: 0.2 }, "note", "note 1"),
    watts: fact(0.5, "note", "note 1"),
    volts: null,
    construction: fact("composition", "note", "note 1"),
    dielectric: null,
    temperatureCoefficient: null,
    taper: null,
    pins: null,
    listedAs: null,
    quantity: 1,
    className: fact("carbon_comp", "line", "line 3"),
    role: null,
    warnings: [],
  };
}

/** A wax paper capacitor of a made-up list. */
export const paper = (designator: string, section: string, farads: number): Part => ({
  ...resistor(designator, section, 1),
  kind: "capacitor",
  printed: `${designator} ${farads * 1e6} mf`,
  value: fact(farads, "line", "line 4"),
  watts: null,
  volts: fact(400, "note", "note 2"),
  construction: null,
  dielectric: fact("paper", "note", "note 2"),
  className: fact("paper_wax", "line", "line 4"),
});

/** A made-up list as it was understood: R1 stands in two sections. */
export const LIST: DocumentReading = {
  parts: [resistor("R1", "Power", 100_000), resistor("R1", "Sound", 470_000), paper("C1", "Sound", 4.7e-8)],
  lineOfPart: [3, 3, 4],
  lines: [
    { number: 1, text: "POWER", became: "heading or note", parts: [], reason: null },
    { number: 3, text: "R1 100K", became: "part", parts: ["R1"], reason: null },
    { number: 9, text: "R?? ~~", became: "unclear", parts: [], reason: "no value" },
  ],
  notes: ["All resistors 1/2 watt"],
  questions: [],
  numbersWithoutValue: [],
  capitalM: null,
};

export const TARGET = { short: "HL", set: "Harborlight", document: "factory list" };
export const RULES = DEFAULTS_IN_FORCE;
