import { describe, expect, test } from "vitest";
import { answer, cellsOf, emptyRow, headsOf, PARTS_SHEET, type PartsRow } from "../../../src/core/index.js";

const RESISTOR: PartsRow = {
  ...emptyRow(PARTS_SHEET),
  designator: "R7",
  kind: "resistor",
  value: "470 k",
  tolerance: "±20 %",
  watts: 0.5,
  type: "carbon_comp",
  usedAs: "plate_load",
};

/** What a column says of a row, as its formula asks: with everything to its left. */
function says(head: string, row: PartsRow) {
  const at = headsOf(PARTS_SHEET).indexOf(head);
  return answer(head, headsOf(PARTS_SHEET).slice(0, at), cellsOf(PARTS_SHEET, row).slice(0, at));
}

describe("a worked-out column", () => {
  test.each<[string, Partial<PartsRow>, string, string | number | null, string]>([
    ["action", {}, "no reading yet", "test", "composition is tested"],
    [
      "action",
      { reading: "612 k", inPlace: "in place" },
      "high in place",
      "replace",
      "parallel paths only lower it: a high one convicts",
    ],
    ["verdict", { reading: "612 k", inPlace: "in place" }, "high in place", "bad", "the same reading"],
    [
      "action",
      { reading: "470 k", inPlace: "in place" },
      "right in place",
      "lift",
      "an in-range one says nothing until lifted",
    ],
    ["action", { reading: "475 k", inPlace: "lifted" }, "right, lifted", "keep", "a lifted one acquits"],
    ["new watts", {}, "1/2 W", 1, "a step up where nobody knows what it burns"],
    ["new value", { reading: "475 k", inPlace: "lifted" }, "kept", null, "a part that stays gets no new one"],
    ["action", { verdict: "bad" }, "cracked", "replace", "a verdict of the user's outranks the missing reading"],
    ["new value", { action: "keep" }, "kept by the user", null, "an action of the user's flows to the right"],
    ["new value", { action: "replace" }, "replaced by the user", "470 k", "the other way round"],
    ["action", { rules: "policy = overhaul" }, "overhaul", "replace", "the rules text of the row decides"],
  ])("%s of a row with %j (%s) is %j: %s", (head, change, _, said) => {
    expect(says(head, { ...RESISTOR, ...change })).toBe(said);
  });

  test("says nothing of an empty row", () => expect(says("action", emptyRow(PARTS_SHEET))).toBeNull());

  test("a head that is not worked out is said, with those that are", () => {
    expect(() => answer("colour", [], [])).toThrow(/verdict, action/);
  });

  test("a figure nobody can read is said", () => {
    expect(() => says("action", { ...RESISTOR, value: "4k7x" })).toThrow(/4k7x/);
  });
});
