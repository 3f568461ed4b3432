import { describe, expect, test } from "vitest";
import { excelHost } from "../../src/hosts/excel.js";
import type { Change, ColumnLook } from "../../src/hosts/host.js";
import { hostContract } from "./contract/contract.js";
import { startExcel } from "./fakeExcel/excel.js";

hostContract("Excel", async () => {
  const excel = startExcel();
  return {
    host: excelHost(),
    type: async ({ sheet, row, column }, text) => excel.type(sheet, row, column, text),
    undo: async () => excel.undo(),
  };
});

const look = (columns: Partial<ColumnLook>[], more: Partial<Extract<Change, { kind: "look" }>> = {}): Change => ({
  kind: "look",
  sheet: "Parts",
  columns: columns.map((column) => ({ width: 80, format: null, tint: null, group: null, folded: false, ...column })),
  frozenColumns: 1,
  filter: true,
  ...more,
});

describe("Excel's own ways", () => {
  test("a sheet is dressed: frozen panes, folds, filter, widths in points, tints", async () => {
    const excel = startExcel();
    const columns = [{ tint: "printed" as const }, ...["was", "was", "new", "new"].map((group) => ({ group }))];
    await excelHost().write([look(columns)], "Dress");
    const sheet = excel.sheet("Parts");
    expect(sheet.folds).toEqual(["2-2", "4-4"]);
    expect(JSON.parse(sheet.frozen!)).toMatchObject({ rows: 1, columns: 1 });
    expect(JSON.parse(sheet.filter!)).toMatchObject({ row: 0, columns: 5 });
    expect(sheet.widths[0]).toBe(60);
    expect(sheet.fills["0,0"]).toBe("#EFE8D8");
  });

  test("dressing again with other groups folds anew, not deeper", async () => {
    const excel = startExcel();
    const host = excelHost();
    await host.write([look(["was", "was", "was"].map((group) => ({ group })))], "Dress");
    await host.write([look(["was", "was", "was"].map((group) => ({ group })))], "Dress");
    expect(excel.sheet("Parts").folds).toEqual(["1-2"]);
    await host.write([look(["was", "new", "new"].map((group) => ({ group })))], "Dress");
    expect(excel.sheet("Parts").folds).toEqual(["2-2"]);
  });

  test("marked rows come without the hidden ones; one row alone is taken as it is", async () => {
    const excel = startExcel();
    excel.sheet("Sheet1").hiddenRows.push(3);
    excel.book.marked = [
      { first: 2, last: 4 },
      { first: 7, last: 7 },
    ];
    const { sheet, spans } = await excelHost().marked();
    expect([sheet, spans.map(({ first }) => first)]).toEqual(["Sheet1", [2, 4, 7]]);
    excel.book.marked = [{ first: 3, last: 3 }];
    expect((await excelHost().marked()).spans).toEqual([{ first: 3, last: 3 }]);
  });

  test("a folded group is closed when it is made", async () => {
    const excel = startExcel();
    const columns = [{ group: "was" }, { group: "was" }, { group: "found" }, { group: "found", folded: true }];
    await excelHost().write([look(columns)], "Dress");
    expect(excel.sheet("Parts").closed).toEqual(["3-3"]);
  });

  test("a formula in a column of text is worked out, not shown", async () => {
    startExcel();
    const host = excelHost();
    const cells: Change = { kind: "cells", sheet: "Parts", row: 0, column: 0, cells: [["n"], [{ formula: "=40+2" }]] };
    await host.write([look([{ format: "@" }]), cells], "Write");
    expect((await host.read("Parts"))!.rows[1]![0]).toEqual({ value: 42, formula: "=40+2" });
  });

  test("a hundred rows or ten thousand take a handful of requests, none over the web's 5 MB", async () => {
    const excel = startExcel();
    const row = Array.from({ length: 20 }, (_, i) => `a text of some length ${i}`);
    const rows = Array.from({ length: 10_000 }, () => row);
    await excelHost().write([{ kind: "cells", sheet: "Parts", row: 0, column: 0, cells: rows.slice(0, 100) }], "Write");
    expect(excel.requests()).toBeLessThan(8);
    await excelHost().write([{ kind: "cells", sheet: "Parts", row: 0, column: 0, cells: rows }], "Write");
    expect(excel.requests()).toBeLessThan(20);
  });

  test("a protected sheet is named before anything is written", async () => {
    const excel = startExcel();
    const host = excelHost();
    await host.write([{ kind: "sheet", sheet: "Parts" }], "New");
    excel.sheet("Parts").protected = true;
    const cells: Change = { kind: "cells", sheet: "Parts", row: 0, column: 0, cells: [["x"]] };
    await expect(host.write([{ kind: "sheet", sheet: "Lines" }, cells], "Write")).rejects.toThrow(/Parts is protected/);
    expect(await host.sheets()).toEqual(["Sheet1", "Parts"]);
  });

  test("Excel's refusals come as sentences", async () => {
    const excel = startExcel();
    excel.refuseWith("InvalidOperationInCellEditMode");
    await expect(excelHost().sheets()).rejects.toThrow("Finish the cell you are typing in");
  });
});
