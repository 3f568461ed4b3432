import { expect, test } from "vitest";
import { emptyRow, PARTS_SHEET, type PartsRow, spokenFor } from "../../../src/core/index.js";

const row = (id: string, more: Partial<PartsRow> = {}): PartsRow => ({
  ...emptyRow(PARTS_SHEET),
  id,
  project: "HL",
  action: "replace",
  ...more,
});
const standing = {
  said: ({ remark }: PartsRow) => remark === "I said so",
  bought: ({ action }: PartsRow) => action === "replace",
  settled: ({ fitted, came }: PartsRow) => fitted !== null || (came ?? 0) > 0,
};

test.each<[why: string, rows: readonly PartsRow[], quiet: readonly string[]]>([
  ["no row names another", [row("HL-1"), row("HL-2")], []],
  ["the named row asks for both", [row("HL-1"), row("HL-2", { sameAs: "HL-1" })], ["HL-2"]],
  [
    "where both name each other, the first row's word counts",
    [row("HL-1", { sameAs: "HL-2" }), row("HL-2", { sameAs: "HL-1" })],
    ["HL-1"],
  ],
  ["more volts are safer", [row("HL-1", { newVolts: 400 }), row("HL-2", { sameAs: "HL-1", newVolts: 630 })], ["HL-1"]],
  ["more watts are safer", [row("HL-1", { newWatts: 1 }), row("HL-2", { sameAs: "HL-1", newWatts: 2 })], ["HL-1"]],
  ["a kept row buys nothing", [row("HL-1", { action: "keep" }), row("HL-2", { sameAs: "HL-1" })], ["HL-1"]],
  ["what came is not asked again", [row("HL-1"), row("HL-2", { sameAs: "HL-1", came: 1 })], ["HL-1"]],
  [
    "a part that the user keeps is not bought by its other row",
    [row("HL-1"), row("HL-2", { sameAs: "HL-1", action: "keep", remark: "I said so" })],
    ["HL-1"],
  ],
  [
    "of two rows that are both kept the first counts",
    [row("HL-1", { action: "keep" }), row("HL-2", { sameAs: "HL-1", action: "keep" })],
    ["HL-2"],
  ],
  ["an id that no row has joins nothing", [row("HL-1"), row("HL-2", { sameAs: "HL-9" })], []],
  ["a row can't be its own double", [row("HL-1", { sameAs: "HL-1" })], []],
  ["another set's part is another part", [row("HL-1"), row("BX-1", { project: "BX", sameAs: "HL-1" })], []],
  [
    "a third list joins too",
    [row("HL-1"), row("HL-2", { sameAs: "HL-1" }), row("HL-3", { sameAs: "HL-2" })],
    ["HL-2", "HL-3"],
  ],
])("a part in two lists is counted once: %s (common practice)", (_why, rows, quiet) => {
  expect([...spokenFor(rows, standing)]).toEqual(quiet);
});
