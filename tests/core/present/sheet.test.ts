import { describe, expect, test } from "vitest";
import {
  emptyRow,
  findSheet,
  headsOf,
  OFFERS_SHEET,
  ON_HAND_SHEET,
  PARTS_SHEET,
  rowsOf,
  SHEETS,
  tableOf,
} from "../../../src/core/index.js";

const row = { ...emptyRow(PARTS_SHEET), id: "HL-1", designator: "R7", value: "470 k", size: 470_000, watts: 0.5 };

describe("sheets", () => {
  test.each(SHEETS.map((sheet) => [sheet.name, sheet] as const))(
    "%s has each head once, as Excel insists",
    (_, sheet) => {
      expect(new Set(headsOf(sheet)).size).toBe(headsOf(sheet).length);
    },
  );

  test("a row is read back as it was written", () => {
    expect(rowsOf(PARTS_SHEET, tableOf(PARTS_SHEET, [row]))).toEqual([row]);
  });

  test("moved columns and columns of the user's own change nothing", () => {
    const { heads, rows } = tableOf(PARTS_SHEET, [row]);
    const moved = {
      heads: ["my notes", ...[...heads].reverse()],
      rows: rows.map((cells) => ["?", ...[...cells].reverse()]),
    };
    expect(rowsOf(PARTS_SHEET, moved)).toEqual([row]);
  });

  test("a worked-out column stands right of all it rests on", () => {
    const live = Object.values(PARTS_SHEET.columns).map((column) => column.live);
    const keys = Object.keys(PARTS_SHEET.columns);
    expect(keys.indexOf("rules")).toBeLessThan(live.indexOf(true));
    expect(keys.indexOf("reading")).toBeLessThan(live.indexOf(true));
  });

  test.each<[string, number | null, string]>([
    ["350 V", 350, "a number with its unit"],
    ["0,5", 0.5, "a decimal comma"],
    ["about 3", null, "words are no number"],
    ["", null, "an empty cell is no zero"],
  ])("a cell of volts that says %j reads as %j: %s", (cell, volts) => {
    expect(rowsOf(PARTS_SHEET, { heads: ["volts"], rows: [[cell]] })[0]!.volts).toBe(volts);
  });

  test("a sheet is known by its name, else by its heads", () => {
    const book = [
      { name: "Harborlight", heads: headsOf(PARTS_SHEET) },
      { name: "shops", heads: headsOf(OFFERS_SHEET) },
      { name: "drawers", heads: headsOf(ON_HAND_SHEET) },
      { name: "notes", heads: ["id", "what"] },
    ];
    expect(findSheet(PARTS_SHEET, book)).toBe("Harborlight");
    expect(findSheet(OFFERS_SHEET, book)).toBe("shops");
    expect(findSheet(ON_HAND_SHEET, book)).toBe("drawers");
    expect(findSheet(PARTS_SHEET, [...book, { name: "parts", heads: [] }])).toBe("parts");
    expect(findSheet(PARTS_SHEET, [{ name: "mine", heads: ["id", "what"] }])).toBeNull();
  });
});
