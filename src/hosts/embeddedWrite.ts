import type { Change, Written } from "./host.js";
import { looksLikeValue, type Model, type StoredCell, type Zone } from "./library.js";
import { columnGroups, HEAD_INK, TINTS } from "./tints.js";

/** A command of the library with its payload. */
export type Step = readonly [type: string, payload: object];

type CellsChange = Extract<Change, { kind: "cells" }>;
type LookChange = Extract<Change, { kind: "look" }>;

const SPARE_ROWS = 60;
const SPARE_COLUMNS = 4;
const TEXT_FORMAT = "@";

/** Does a write in the one order in which its parts do not disturb each other: sheets, room, formats, cells, dress. */
export function writeInto(model: Model, changes: readonly Change[], run: (steps: readonly Step[]) => void): void {
  const cells = changes.filter((change) => change.kind === "cells");
  const looks = changes.filter((change) => change.kind === "look");
  run(newSheets(model, changes));
  run(changes.flatMap((change) => room(model, change)));
  run(looks.flatMap((look) => columnFormats(model, look)));
  run(cells.flatMap((change) => cellSteps(model, change)));
  run(looks.flatMap((look) => dress(model, look)));
}

/** The library's id of a sheet that stands there. */
export function sheetIdOf(model: Model, sheet: string): string {
  const found = model.getters.getSheetIdByName(sheet);
  if (found === undefined) throw new Error(`There is no sheet named ${sheet}.`);
  return found;
}

function newSheets(model: Model, changes: readonly Change[]): Step[] {
  const wanted = new Set(changes.map((change) => change.sheet));
  const missing = [...wanted].filter((sheet) => model.getters.getSheetIdByName(sheet) === undefined);
  const count = model.getters.getSheetIds().length;
  return missing.map((name, i) => ["CREATE_SHEET", { sheetId: `sheet-${name}`, name, position: count + i }]);
}

function room(model: Model, change: Change): Step[] {
  if (change.kind === "sheet") return [];
  const sheetId = sheetIdOf(model, change.sheet);
  const [rows, columns] =
    change.kind === "look"
      ? [1, change.columns.length]
      : [change.row + change.cells.length, change.column + Math.max(0, ...change.cells.map((row) => row.length))];
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

function columnFormats(model: Model, look: LookChange): Step[] {
  const sheetId = sheetIdOf(model, look.sheet);
  const bottom = model.getters.getNumberRows(sheetId) - 1;
  const formats = look.columns.flatMap((column, i): Step[] =>
    column.format === null
      ? []
      : [["SET_FORMATTING", { sheetId, target: [zone(i, i, 1, bottom)], format: column.format }]],
  );
  return [...formats, ...rewrittenTexts(model, look)];
}

/** Texts that stood there before their column's format: whether an apostrophe guards them depends on it. */
function rewrittenTexts(model: Model, look: LookChange): Step[] {
  const sheetId = sheetIdOf(model, look.sheet);
  return model.getters.getCells(sheetId).flatMap(({ id }): Step[] => {
    const position = model.getters.getCellPosition(id);
    const format = look.columns[position.col]?.format;
    const stored = model.getters.getCell(position);
    if (format === undefined || format === null || position.row === 0 || !stored) return [];
    if (stored.isFormula) return format === TEXT_FORMAT ? [["UPDATE_CELL", { ...position, format: "" }]] : [];
    const text = stored.content.startsWith("'") && stored.format !== TEXT_FORMAT ? stored.content.slice(1) : null;
    return text === null ? [] : [["UPDATE_CELL", { ...position, ...textContent(text, format) }]];
  });
}

function cellSteps(model: Model, change: CellsChange): Step[] {
  const sheetId = sheetIdOf(model, change.sheet);
  return change.cells.flatMap((row, r) =>
    row.flatMap((written, c): Step[] => {
      if (written === null) return [];
      const position = { sheetId, col: change.column + c, row: change.row + r };
      return [["UPDATE_CELL", { ...position, ...contentOf(written, model.getters.getCell(position)) }]];
    }),
  );
}

function contentOf(
  written: NonNullable<Written>,
  stored: StoredCell | undefined,
): { content: string; format?: string } {
  const format = stored?.format;
  if (typeof written === "object") {
    return format === TEXT_FORMAT ? { content: written.formula, format: "" } : { content: written.formula };
  }
  if (typeof written === "string") return textContent(written, format);
  return { content: typeof written === "boolean" ? String(written).toUpperCase() : String(written) };
}

/**
 * How a text is stored so that it stays text: an apostrophe guards what would run or turn into a number or a date. A
 * column of text guards all but formulas, and would show the apostrophe: a cell that needs one leaves that format.
 */
function textContent(text: string, format: string | undefined): { content: string; format?: string } {
  const wouldRun = text.startsWith("=");
  if (format === TEXT_FORMAT) return wouldRun ? { content: `'${text}`, format: "" } : { content: text };
  return { content: wouldRun || text.startsWith("'") || looksLikeValue(text) ? `'${text}` : text };
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

function folds(model: Model, sheetId: string, look: LookChange): Step[] {
  const old = model.getters.getHeaderGroups(sheetId, "COL");
  const step =
    (type: string) =>
    (group: { start: number; end: number }): Step => [
      type,
      { sheetId, dimension: "COL", start: group.start, end: group.end },
    ];
  return [...old.map(step("UNGROUP_HEADERS")), ...columnGroups(look.columns).map(step("GROUP_HEADERS"))];
}

/** Filter buttons come with a table in the library; it reaches as far down as cells are written. */
function filterSteps(model: Model, sheetId: string, look: LookChange): Step[] {
  const old = model.getters
    .getCoreTables(sheetId)
    .map((table): Step => ["REMOVE_TABLE", { sheetId, target: [table.range.zone] }]);
  if (!look.filter) return old;
  const filled = zone(0, look.columns.length - 1, 0, Math.max(1, lastRow(model, sheetId)));
  const ranges = [model.getters.getRangeDataFromZone(sheetId, filled)];
  const config = { ...PLAIN_TABLE, hasFilters: true };
  return [...old, ["CREATE_TABLE", { sheetId, ranges, config, tableType: "static" }]];
}

const PLAIN_TABLE = {
  totalRow: false,
  firstColumn: false,
  lastColumn: false,
  numberOfHeaders: 1,
  bandedRows: false,
  bandedColumns: false,
  automaticAutofill: false,
  styleId: "None",
};

function lastRow(model: Model, sheetId: string): number {
  const positions = model.getters.getCells(sheetId).map(({ id }) => model.getters.getCellPosition(id));
  return positions.reduce((last, at) => (isFilled(model.getters.getCell(at)) ? Math.max(last, at.row) : last), 0);
}

const isFilled = (stored: StoredCell | undefined) => !!stored && (stored.isFormula || stored.content !== "");

const zone = (left: number, right: number, top: number, bottom: number): Zone => ({ left, right, top, bottom });
