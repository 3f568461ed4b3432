import { describe, expect, test } from "vitest";
import { PARTS_SHEET } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { ColumnLook } from "../../src/hosts/host.js";
import { Model } from "../../src/hosts/library.js";
import { type Bench, hostContract } from "./contract/contract.js";

async function embeddedBench(): Promise<Bench> {
  const { host, model } = embeddedWorkbook(new Model());
  return {
    host,
    type: async (place, content) => {
      const sheetId = model().getters.getSheetIdByName(place.sheet);
      model().dispatch("UPDATE_CELL", { sheetId, col: place.column, row: place.row, content });
    },
    undo: async () => void model().dispatch("REQUEST_UNDO"),
  };
}

hostContract("the embedded sheet", embeddedBench);

describe("the embedded sheet's own ways", () => {
  const look = (columns: Partial<ColumnLook>[]) => ({
    kind: "look" as const,
    sheet: "Parts",
    columns: columns.map((column) => ({ width: 80, format: null, tint: null, group: null, folded: false, ...column })),
    frozenColumns: 1,
    filter: true,
  });

  test("marked rows come without the hidden ones", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    const sheetId = model().getters.getActiveSheetId();
    model().dispatch("HIDE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [3] });
    const { selection } = model() as unknown as { selection: { selectZone(anchor: object): void } };
    selection.selectZone({ cell: { col: 0, row: 2 }, zone: { left: 0, right: 1, top: 2, bottom: 4 } });
    expect((await host.marked()).spans.map(({ first }) => first)).toEqual([2, 4]);
  });

  test("what ten thousand lines come to is written, read back and undone in one go", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    const [rows, columns] = [10_000, 15];
    const cells = Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, at) => `${row} ${at}`));
    await host.write([{ kind: "cells", sheet: "Parts", row: 0, column: 0, cells }], "Write");
    const written = (await host.read("Parts"))!.rows;
    expect([written.length, written[9_999]![14]]).toEqual([rows, { value: "9999 14", formula: null }]);
    model().dispatch("REQUEST_UNDO");
    expect((await host.read("Parts"))?.rows ?? []).toEqual([]);
  });

  test("two groups side by side stay two, each with its first column outside the fold", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    const groups = ["was", "was", "was", "new", "new"].map((group) => ({ group }));
    await host.write([look(groups)], "Dress");
    const sheetId = model().getters.getSheetIdByName("Parts")!;
    expect(model().getters.getHeaderGroups(sheetId, "COL")).toMatchObject([
      { start: 1, end: 2 },
      { start: 4, end: 4 },
    ]);
  });

  test("a folded group stands closed at first; opened by the user, it stays open when the sheet is dressed again", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    const dress = look([{ group: "was" }, { group: "was" }, { group: "found" }, { group: "found", folded: true }]);
    await host.write([dress], "Dress");
    const sheetId = model().getters.getSheetIdByName("Parts")!;
    const closed = () =>
      model()
        .getters.getHeaderGroups(sheetId, "COL")
        .map(({ isFolded }) => isFolded === true);
    expect(closed()).toEqual([false, true]);
    model().dispatch("UNFOLD_HEADER_GROUP", { sheetId, dimension: "COL", start: 3, end: 3 });
    await host.write([dress], "Dress");
    expect(closed()).toEqual([false, false]);
  });

  test.each([
    [10e-12, "0.00000000001", "10 pF"],
    [2.2e-12, "0.0000000000022", "2.2 pF"],
    [470e3, "470000.0", "470 k"],
  ])("a size of %d shows as %s (%s), never as nought", async (size, shown) => {
    const { host, model } = embeddedWorkbook(new Model());
    const dress = look([{ format: PARTS_SHEET.columns.size.format }]);
    await host.write([dress, { kind: "cells", sheet: "Parts", row: 1, column: 0, cells: [[size]] }], "Write");
    const sheetId = model().getters.getSheetIdByName("Parts")!;
    expect(model().getters.getEvaluatedCell({ sheetId, col: 0, row: 1 }).formattedValue).toBe(shown);
  });

  test("dressing twice leaves one set of filter buttons and one set of groups", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    const dress = look([{ group: "was" }, { group: "was" }]);
    await host.write([dress], "Dress");
    await host.write([dress, { kind: "cells", sheet: "Parts", row: 0, column: 0, cells: [["a"], [1], [2]] }], "Dress");
    const sheetId = model().getters.getSheetIdByName("Parts")!;
    expect(
      model()
        .getters.getCoreTables(sheetId)
        .map((table) => table.range.zone),
    ).toMatchObject([{ top: 0, bottom: 2 }]);
    expect(model().getters.getHeaderGroups(sheetId, "COL").length).toBe(1);
  });

  test("a refused change takes the whole write back and leaves the step before alone", async () => {
    const { host } = embeddedWorkbook(new Model());
    await host.write([{ kind: "cells", sheet: "Parts", row: 0, column: 0, cells: [["kept"]] }], "First");
    const before = await host.read("Parts");
    const bad = { kind: "sheet" as const, sheet: "no [brackets] allowed" };
    await expect(host.write([bad], "Bad sheet")).rejects.toThrow("refused");
    await expect(host.write([{ ...look([{}]), frozenColumns: 500 }], "Bad look")).rejects.toThrow("refused");
    expect(await host.read("Parts")).toEqual(before);
  });

  test("another workbook takes the place of the first and listeners hear of it", async () => {
    const workbook = embeddedWorkbook(new Model());
    const heard: string[] = [];
    workbook.host.onChange((sheet) => heard.push(sheet));
    const other = embeddedWorkbook(new Model());
    await other.host.write([{ kind: "cells", sheet: "Parts", row: 0, column: 0, cells: [["other"]] }], "Write");
    workbook.replace(other.model());
    expect(heard).toContain("Parts");
    expect((await workbook.host.read("Parts"))!.rows[0]![0]!.value).toBe("other");
  });
});
