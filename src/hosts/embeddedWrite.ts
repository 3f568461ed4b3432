import { addFilter, lastRow, removeFilters } from "./embeddedFilter.js";
import { inRuns } from "./embeddedRuns.js";
import { contentOf, contentUnder, holds } from "./embeddedText.js";
import type { Change } from "./host.js";
import type { Model, Zone } from "./library.js";
import type { Step } from "./step.js";
import { columnGroups, HEAD_INK, TINTS } from "./tints.js";

type CellsChange = Extract<Change, { kind: "cells" }>;
type LookChange = Extract<Change, { kind: "look" }>;

/** Rows added further down take the formats of the last one, so that few spare rows will do. */
const SPARE_ROWS = 40;
const SPARE_COLUMNS = 4;

/** Does a write in the one order in which its parts do not disturb each other: sheets, room, formats, cells, dress. */
export function writeInto(model: Model, changes: readonly Change[], run: (steps: readonly Step[]) => void): void {
  const cells = changes.filter((change) => change.kind === "cells");
  const looks = changes.filter((change) => change.kind === "look");
  run(newSheets(model, changes));
  run(changes.flatMap((change) => room(model, change)));
  run(looks.flatMap((look) => columnFormats(model, look, cells)));
  run(inRuns(cells.flatMap((change) => cellSteps(model, change, looks))));
  run(looks.flatMap((look) => dress(model, look)));
}

/** The library's id of a sheet that stands there. */
export function sheetIdOf(model: Model, sheet: string): string {
  const found = model.getters.getSheetIdByName(sheet);
  if (found === undefined) throw new Error(`There is no sheet named ${sheet}.`);
  return found;
}

/** The blank sheet of a new workbook becomes the first one that is written; further ones are added behind. */
function newSheets(model: Model, changes: readonly Change[]): Step[] {
  const wanted = new Set(changes.map((change) => change.sheet));
  const missing = [...wanted].filter((sheet) => model.getters.getSheetIdByName(sheet) === undefined);
  const ids = model.getters.getSheetIds();
  const blank = ids.length === 1 && model.getters.getCells(ids[0]!).length === 0 ? ids[0] : undefined;
  return missing.map((name, i) =>
    blank !== undefined && i === 0
      ? ["RENAME_SHEET", { sheetId: blank, oldName: model.getters.getSheetName(blank), newName: name }]
      : [
          "CREATE_SHEET",
          {
            sheetId: `sheet-${name}`,
            name,
            rows: SPARE_ROWS,
            position: ids.length + i - (blank === undefined ? 0 : 1),
          },
        ],
  );
}

function room(model: Model, change: Change): Step[] {
  if (change.kind === "sheet") return [];
  const sheetId = sheetIdOf(model, change.sheet);
  const [rows, columns] =
    change.kind === "look"
      ? [1, change.columns.length]
      : [change.row + change.cells.length, change.column + (change.cells[0]?.length ?? 0)];
  const grow = (dimension: "ROW" | "COL", has: number, needs: number, spare: number): Step[] =>
    needs + spare <= has
      ? []
      : [
          [
            "ADD_COLUMNS_ROWS",
            {
              sheetId,
              sheetName: change.sheet,
              dimension,
              base: has - 1,
              quantity: needs + spare - has,
              position: "after",
            },
          ],
        ];
  return [
    ...grow("ROW", model.getters.getNumberRows(sheetId), rows, SPARE_ROWS),
    ...grow("COL", model.getters.getNumberCols(sheetId), columns, SPARE_COLUMNS),
  ];
}

/** The formats of columns, in cells that are not written along with them: those get theirs with what they hold. */
function columnFormats(model: Model, look: LookChange, cells: readonly CellsChange[]): Step[] {
  const sheetId = sheetIdOf(model, look.sheet);
  const bottom = model.getters.getNumberRows(sheetId) - 1;
  const written = writtenCells(cells.filter(({ sheet }) => sheet === look.sheet));
  const formats = look.columns.flatMap(({ format }, column): Step[] => {
    const target =
      format === null ? [] : gaps(written.get(column), bottom).map(([from, to]) => zone(column, column, from, to));
    return target.length === 0 ? [] : [["SET_FORMATTING", { sheetId, target, format }]];
  });
  return [...formats, ...rewrittenTexts(model, look)];
}

/** The rows in which each column is written. */
function writtenCells(changes: readonly CellsChange[]): ReadonlyMap<number, ReadonlySet<number>> {
  const rows = new Map<number, Set<number>>();
  for (const change of changes)
    change.cells.forEach((row, r) => {
      row.forEach((written, c) => {
        if (written === null) return;
        const column = rows.get(change.column + c) ?? new Set();
        rows.set(change.column + c, column.add(change.row + r));
      });
    });
  return rows;
}

/** The runs of rows below the head that are not among some. */
function gaps(rows: ReadonlySet<number> | undefined, bottom: number): (readonly [from: number, to: number])[] {
  const found: [number, number][] = [];
  for (let row = 1; row <= bottom; row++) {
    const last = found.at(-1);
    if (rows?.has(row)) continue;
    if (last?.[1] === row - 1) last[1] = row;
    else found.push([row, row]);
  }
  return found;
}

/** Cells that stood there before their column's format: whether an apostrophe guards a text depends on it. */
function rewrittenTexts(model: Model, look: LookChange): Step[] {
  const sheetId = sheetIdOf(model, look.sheet);
  return model.getters.getCells(sheetId).flatMap(({ id }): Step[] => {
    const position = model.getters.getCellPosition(id);
    const format = look.columns[position.col]?.format ?? null;
    const stored = model.getters.getCell(position);
    const content = format === null || position.row === 0 || !stored ? null : contentUnder(format, stored);
    return content === null ? [] : [["UPDATE_CELL", { ...position, ...content }]];
  });
}

function cellSteps(model: Model, change: CellsChange, looks: readonly LookChange[]): Step[] {
  const sheetId = sheetIdOf(model, change.sheet);
  const look = looks.find(({ sheet }) => sheet === change.sheet);
  return change.cells.flatMap((row, r) =>
    row.flatMap((written, c): Step[] => {
      if (written === null) return [];
      const position = { sheetId, col: change.column + c, row: change.row + r };
      const stored = model.getters.getCell(position);
      const format = (position.row > 0 && look?.columns[position.col]?.format) || undefined;
      const content = contentOf(written, format ?? stored?.format);
      const isDressed = format === undefined || stored?.format === format;
      if (isDressed && holds(stored, content)) return [];
      return [["UPDATE_CELL", { ...position, ...(format === undefined ? {} : { format }), ...content }]];
    }),
  );
}

function dress(model: Model, look: LookChange): Step[] {
  const sheetId = sheetIdOf(model, look.sheet);
  return [
    ...look.columns.map((column, i): Step => {
      const fillColor = column.tint ? TINTS[column.tint] : "";
      const style = { bold: true, textColor: HEAD_INK, fillColor, wrapping: "clip" };
      return ["SET_FORMATTING", { sheetId, target: [zone(i, i, 0, 0)], style }];
    }),
    ...look.columns.map(
      (column, i): Step => [
        "RESIZE_COLUMNS_ROWS",
        { sheetId, sheetName: look.sheet, dimension: "COL", elements: [i], size: column.width },
      ],
    ),
    ["FREEZE_ROWS", { sheetId, quantity: 1 }],
    look.frozenColumns > 0
      ? ["FREEZE_COLUMNS", { sheetId, quantity: look.frozenColumns }]
      : ["UNFREEZE_COLUMNS", { sheetId }],
    ...folds(model, sheetId, look),
    ...filterSteps(model, sheetId, look),
  ];
}

/** Groups of columns; a sheet that had other ones gets them anew, and one that has them keeps what the user opened. */
function folds(model: Model, sheetId: string, look: LookChange): Step[] {
  const old = model.getters.getHeaderGroups(sheetId, "COL");
  const wanted = columnGroups(look.columns);
  const isSame = (group: { start: number; end: number }, at: number) =>
    group.start === old[at]?.start && group.end === old[at]?.end;
  if (old.length === wanted.length && wanted.every(isSame)) return [];
  const step =
    (type: string) =>
    ({ start, end }: { start: number; end: number }): Step => [type, { sheetId, dimension: "COL", start, end }];
  return [
    ...old.map(step("UNGROUP_HEADERS")),
    ...wanted.map(step("GROUP_HEADERS")),
    ...wanted.filter(({ folded }) => folded).map(step("FOLD_HEADER_GROUP")),
  ];
}

function filterSteps(model: Model, sheetId: string, look: LookChange): Step[] {
  const filled = zone(0, look.columns.length - 1, 0, Math.max(1, lastRow(model, sheetId)));
  return [...removeFilters(model, sheetId), ...(look.filter ? [addFilter(model, sheetId, filled)] : [])];
}

const zone = (left: number, right: number, top: number, bottom: number): Zone => ({ left, right, top, bottom });
