import { describe, expect, test } from "vitest";
import {
  DEFAULTS_IN_FORCE,
  differenceText,
  emptyRow,
  otherListCell,
  PARTS_SHEET,
  type PartsRow,
  readDocument,
  rowDifferences,
  rowOfPart,
  rowPairs,
} from "../../../src/core/index.js";
import { withOtherList } from "../../../src/core/job/otherList.js";
import { partOfRow } from "../../../src/core/present/partRow.js";

const FACTORY = `R201  2.2 MEG  1/2 W
R202  220  1W
R203  470K  1/2 W
C201  .1 MFD 200V paper
C202  .02 MFD 400V paper
C203  330 MMF 500V mica`;
const FOLDER = `R1  2.2 meg 1/2W
R2  220  2W
R3  470K 1/2W
C1  .1 200V paper mfd
C2  .02 mfd 600V paper
C3  390 mmf 500V mica`;

/** A list as the rows of Parts that it becomes, numbered on from `first`. */
function rowsOfList(text: string, document: string, first: number): readonly PartsRow[] {
  const lines = text.split("\n").map((line, at) => ({ number: at + 1, text: line, cells: null }));
  const { parts } = readDocument(lines, { capitalM: null, era: 1955, inForce: DEFAULTS_IN_FORCE });
  return parts.map((part, at) =>
    rowOfPart({ ...part, id: `HL-${first + at}`, document }, "HL", DEFAULTS_IN_FORCE.rules),
  );
}

const rows = [...rowsOfList(FACTORY, "factory", 1), ...rowsOfList(FOLDER, "folder", 11)];
const row = (name: string) => rows.find(({ designator }) => designator === name)!;
const never = () => false;
const names = (found: ReturnType<typeof rowPairs>) =>
  found.pairs.map(({ one, other }) => `${one.designator} ${other.designator}`);

describe("the rows of two lists of one set", () => {
  test("are paired part by part", () => {
    expect(names(rowPairs(rows, never))).toEqual(["R201 R1", "R202 R2", "R203 R3", "C201 C1", "C202 C2", "C203 C3"]);
  });

  test("that the sheet names the same part stand, whatever the signs", () => {
    const said = rows.map((each) => (each.designator === "R3" ? { ...each, sameAs: row("R201").id } : each));
    const found = rowPairs(said, never).pairs.find(({ other }) => other.designator === "R3")!;
    expect([found.one.designator, found.confidence]).toEqual(["R201", 1]);
  });

  test("that were refused are not proposed again", () => {
    const isRefused = (one: string, other: string) => one === row("R203").id && other === row("R3").id;
    expect(names(rowPairs(rows, isRefused))).not.toContain("R203 R3");
  });

  test("are left alone where a third list has no such part", () => {
    const third = rowsOfList("R7 2.2 meg 1/2W", "later folder", 21);
    const found = rowPairs([...rows, ...third], never);
    expect(found.pairs.filter(({ other }) => other.document === "later folder")).toHaveLength(1);
  });
});

describe("what two lists say differently of a part", () => {
  const text = (one: string, other: string) =>
    rowDifferences(row(one), row(other)).map((each) => differenceText(each, [row(one), row(other)]));

  test.each([
    ["R202", "R2", "watts 2 W in folder (the safer), 1 W in factory", "more watts are safer"],
    ["C202", "C2", "volts 600 V in folder (the safer), 400 V in factory", "more volts are safer"],
    ["C203", "C3", "value 330 pF in factory, 390 pF in folder", "neither value is taken in silence"],
  ])("%s and %s: %s (%s)", (one, other, said, _why) => expect(text(one, other)).toEqual([said]));

  test("a figure that only a default filled in is no difference", () => {
    expect(text("R201", "R1")).toEqual([]);
  });
});

describe("a part with what the other list says", () => {
  const partOf = (name: string, cell: string) => withOtherList(partOfRow(row(name), DEFAULTS_IN_FORCE.rules), cell);
  const cell = (name: string, other: string) => otherListCell(row(name), [row(other)]);

  test("takes the safer rating and says whose it is", () => {
    const { part, because } = partOf("R202", cell("R202", "R2"));
    expect(part.watts).toEqual({ value: 2, from: "line", at: "HL-12 in the other list" });
    expect(because).toEqual(["HL-12 in the other list says watts 2 W, the safer of the two"]);
  });

  test("keeps its own where that is the safer, and shows the other", () => {
    const { part, because } = partOf("R2", cell("R2", "R202"));
    expect(part.watts?.value).toBe(2);
    expect(because).toEqual(["HL-2 in the other list says watts 1 W"]);
  });

  test("keeps its own value, and shows the other", () => {
    const { part, because } = partOf("C203", cell("C203", "C3"));
    expect(part.value?.value).toBeCloseTo(330e-12, 15);
    expect(because).toEqual(["HL-16 in the other list says value 390 pF"]);
  });

  test("keeps its own where the user left the other's aside", () => {
    expect(partOf("R202", "HL-12: watts 2 W left aside").part.watts?.value).toBe(1);
  });

  test("keeps a figure that the user typed", () => {
    const typed = partOfRow({ ...row("R202"), watts: 0.5 }, DEFAULTS_IN_FORCE.rules);
    expect(withOtherList(typed, "HL-12: watts 2 W").part.watts?.value).toBe(0.5);
  });

  test("what was left aside stays so when the cell is written anew", () => {
    const aside = { ...row("R202"), otherList: "HL-12: watts 2 W left aside" };
    expect(otherListCell(aside, [row("R2")])).toBe("HL-12: watts 2 W left aside");
  });

  test("takes a rating that its own list leaves unsaid", () => {
    const bare = { ...emptyRow(PARTS_SHEET), id: "HL-30", kind: "capacitor", value: "0.02 µF", designator: "C9" };
    expect(otherListCell(bare, [row("C2")])).toBe("HL-15: volts 600 V");
  });
});
