import { describe, expect, test } from "vitest";
import { defaultRules, fact, type Part, partOfRow, rowOfPart } from "../../../src/core/index.js";

const RESISTOR: Part = {
  id: "HL-14",
  document: "factory",
  section: "Main chassis",
  designator: "R7",
  parent: null,
  suffix: null,
  kind: "resistor",
  printed: "R7 470K",
  value: fact(470_000, "line", "line 14"),
  span: null,
  tolerance: fact({ minus: 0.2, plus: 0.2 }, "note", "note 2"),
  watts: fact(0.5, "note", "note 2"),
  volts: null,
  construction: fact("composition", "note", "note 2"),
  dielectric: null,
  temperatureCoefficient: null,
  taper: null,
  pins: null,
  listedAs: null,
  quantity: 1,
  className: fact("carbon_comp", "default", "carbon_comp"),
  role: fact("plate_load", "line", "line 14"),
  warnings: [{ code: "ambiguous-m", text: "2 M is 2 k or 2 M" }],
};

const SECTION: Part = {
  ...RESISTOR,
  id: "HL-20b",
  designator: "C12",
  parent: "C12",
  suffix: "B",
  kind: "capacitor",
  value: fact(4.7e-8, "line", "line 20"),
  tolerance: fact({ minus: 0.2, plus: 0.8 }, "line", "line 20"),
  volts: fact(350, "line", "line 20"),
  watts: null,
  construction: null,
  dielectric: fact("ceramic", "line", "line 20"),
  temperatureCoefficient: fact("N750", "line", "line 20"),
  className: fact("ceramic_tc", "line", "line 20"),
  role: null,
  warnings: [],
};

const rules = defaultRules();

describe("a part in its row", () => {
  test.each([
    ["a resistor with notes", RESISTOR],
    ["a section of a can", SECTION],
    ["a part inside another", { ...RESISTOR, listedAs: "part of T3" as const }],
    ["a place where nothing is fitted", { ...SECTION, listedAs: "not fitted" as const }],
    ["a trimmer", { ...SECTION, value: null, span: { min: 3e-12, max: 3e-11 }, temperatureCoefficient: null }],
  ])("%s comes back as it went", (_, part) => {
    expect(partOfRow(rowOfPart(part, "HL", rules), rules)).toEqual(part);
  });

  test("a capacitor's value reads as a restorer writes it, with its size in farads beside it", () => {
    const row = rowOfPart(SECTION, "HL", rules);
    expect([row.value, row.size]).toEqual(["0.047 µF", 4.7e-8]);
  });

  test("watts that the user typed over are the user's, the rest stays where it was from", () => {
    const part = partOfRow({ ...rowOfPart(RESISTOR, "HL", rules), watts: 1 }, rules);
    expect(part.watts).toEqual(fact(1, "user", "typed"));
    expect(part.tolerance?.from).toBe("note");
  });

  test("a type can be named by its label or by its rule's id", () => {
    const typed = { ...rowOfPart(SECTION, "HL", rules), type: "paper_wax" };
    expect(partOfRow(typed, rules).className).toEqual(fact("paper_wax", "user", "typed"));
  });

  test("a value nobody can read is said, not passed over", () => {
    expect(() => partOfRow({ ...rowOfPart(RESISTOR, "HL", rules), value: "4k7x" }, rules)).toThrow(/4k7x/);
  });
});
