import { describe, expect, test } from "vitest";
import {
  answer,
  cellsOf,
  DEFAULTS_IN_FORCE,
  demandLines,
  emptyRow,
  headsOf,
  leadingReasons,
  networkValue,
  PARTS_SHEET,
  type PartsRow,
  ratingsOfRow,
  readNetwork,
  stagesOf,
} from "../../../src/core/index.js";

const CAN_SECTION: PartsRow = {
  ...emptyRow(PARTS_SHEET),
  designator: "C21 A",
  kind: "capacitor",
  value: "40 µF",
  volts: 450,
  type: "elec_single",
  usedAs: "first_filter",
};

const COUPLING: PartsRow = {
  ...emptyRow(PARTS_SHEET),
  designator: "C9",
  kind: "capacitor",
  value: "0.02 µF",
  volts: 400,
  type: "paper_moulded",
  usedAs: "coupling_grid",
  rules: "policy = conservator",
  voltsThere: 150,
  reading: "2000 Mohm",
  inPlace: "lifted",
};

/** What a column of the sheet says of a row, with everything to its left. */
function says(head: string, row: PartsRow) {
  const at = headsOf(PARTS_SHEET).indexOf(head);
  return answer(head, headsOf(PARTS_SHEET).slice(0, at), cellsOf(PARTS_SHEET, row).slice(0, at));
}

describe("what the user found at a part's place", () => {
  test("a 450 V section that sees 525 V becomes a pair: no single electrolytic is made above 500 V", () => {
    expect(says("new value", CAN_SECTION)).not.toMatch(/\+/);
    const text = String(says("new value", { ...CAN_SECTION, peakVoltsThere: 525 }));
    const [one, other] = text.split(" + ");
    expect(other).toBe(one);
    // Two equal ones in series have half the farads: never below the 40 µF of the list.
    expect(networkValue(readNetwork(text, "capacitor"), "capacitor")).toBeGreaterThanOrEqual(40e-6);
    expect(says("because", { ...CAN_SECTION, peakVoltsThere: 525 })).toMatch(/525 V.*two in series.*across each/);
  });

  test("the pair is bought piece by piece: two capacitors that bear 60 % of the peak, two balancing resistors", () => {
    const pieces = ratingsOfRow({ ...CAN_SECTION, peakVoltsThere: 525 }, DEFAULTS_IN_FORCE);
    const demands = pieces.map((ratings) => ({ part: "1", ratings, pieces: 1, pick: null }));
    const lines = demandLines(demands, []);
    expect(lines.map((line) => [line.demands[0]!.ratings.kind, line.pieces])).toEqual([
      ["capacitor", 2],
      ["resistor", 2],
    ]);
    expect(pieces[0]!.leastVolts).toBeGreaterThanOrEqual(0.6 * 525);
    expect(pieces.at(-1)!.technologies[0]).toBe("metal_film");
  });

  test("the rectifier's limit holds back a first filter, and says where it wins over the list", () => {
    expect(says("new size", { ...CAN_SECTION, mostCapacitance: "45 µF" })).toBeLessThanOrEqual(45e-6);
    const below = { ...CAN_SECTION, mostCapacitance: "30 µF" };
    expect(says("new size", below)).toBeLessThanOrEqual(30.0001e-6);
    expect(says("because", below)).toMatch(/30 µF at most: that wins over the 40 µF of the list/);
  });

  test("the next grid's resistor says how good the insulation has to be", () => {
    // Common practice: the leak may shift the grid by a fraction of a volt; a hundred times the grid resistor asks a hundred times the insulation.
    const action = (gridResistor: string) => says("verdict", { ...COUPLING, gridResistor });
    expect([action("100 k"), action("10 M")]).toEqual(["good", "bad"]);
  });

  test("a limit nobody can read is said, not passed over", () => {
    expect(() => says("new value", { ...CAN_SECTION, mostCapacitance: "as printed" })).toThrow(/as printed/);
  });
});

describe("what else is known of a part, in words", () => {
  const BALLAST: PartsRow = {
    ...emptyRow(PARTS_SHEET),
    designator: "BT1",
    kind: "resistor",
    type: "ballast",
    usedAs: "heater_drop",
  };
  const CRYSTAL: PartsRow = { ...emptyRow(PARTS_SHEET), designator: "CR3", kind: "rectifier", type: "germanium_diode" };

  test("tells a string's heaters, for which no column stands", () => {
    // 123 V less 62.6 V at 0.3 A are 201 ohms: 200, which burns 18 W.
    const row = { ...BALLAST, alsoKnown: "five heaters, 62.6 V in all, 0.3 A" };
    expect(says("new size", row)).toBe(200);
    expect(says("new watts", row)).toBeGreaterThanOrEqual(36);
  });

  test("tells what is seen and what a bench test says", () => {
    expect(says("action", { ...CRYSTAL, alsoKnown: "drops 0.31 V, 35 K reverse" })).toBe("replace");
    expect(says("action", { ...CRYSTAL, alsoKnown: "drops 0.31 V, 350 K reverse" })).toBe("keep");
    expect(says("action", { ...COUPLING, alsoKnown: "body cracked" })).toBe("replace");
  });

  test("a cell of its own outranks the words", () => {
    const row = { ...CAN_SECTION, alsoKnown: "warm-up 525 V" };
    expect(says("new value", row)).toMatch(/\+/);
    expect(says("new value", { ...row, alsoKnown: "420 V on it", peakVoltsThere: 300, voltsThere: 280 })).not.toMatch(
      /\+/,
    );
  });
});

describe("the room a part has", () => {
  const fitIn = (row: Partial<PartsRow>, settings = {}) => {
    const inForce = { ...DEFAULTS_IN_FORCE, settings: { ...DEFAULTS_IN_FORCE.settings, ...settings } };
    return stagesOf({ ...COUPLING, reading: null, ...row }, inForce).ratings.fit;
  };

  test("goes into the limits and says how the usual body fits; where nobody measured, the old body is the measure", () => {
    expect(fitIn({})).toMatchObject({ fit: "fits" });
    expect(fitIn({})?.because).toMatch(/no larger than the old one/);
    expect(fitIn({ roomLength: 38, roomDiameter: 14 })?.fit).toBe("fits");
    expect(fitIn({ roomLength: 38, roomDiameter: 2 })?.fit).toBe("tight");
    expect(ratingsOfRow({ ...COUPLING, roomLength: 38 }, DEFAULTS_IN_FORCE)[0]!.room?.lengthMetres).toBe(0.038);
  });

  test("is the old shell's inside where new parts are hidden in it, to be measured", () => {
    expect(fitIn({}, { hide_new_parts: "restuff" })).toMatchObject({ fit: "unknown" });
    expect(fitIn({}, { hide_new_parts: "restuff" })?.because).toMatch(/old shell's inside is not known/);
  });
});

test("the card leads with what convicts and with the rectifier's limit", () => {
  const row = { ...CAN_SECTION, mostCapacitance: "30 µF" };
  const [first, second] = leadingReasons(stagesOf(row, DEFAULTS_IN_FORCE));
  expect(first).toMatch(/electrolyte dries|peak current/);
  expect(second).toMatch(/rectifier's sheet allows 30 µF at most/);
});
