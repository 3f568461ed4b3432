import { dressSheet } from "./excelDress.js";
import { excelContent } from "./excelText.js";
import type { Change, Written } from "./host.js";

type CellsChange = Extract<Change, { kind: "cells" }>;
type LookChange = Extract<Change, { kind: "look" }>;

/** Bytes of cells in one request: the web takes 5 MB with all that goes around them. */
const BYTES_AT_ONCE = 1_000_000;

/** Rows of one sheet in Excel. */
const ALL_ROWS = 1_048_576;

/** Does a write in the order in which its parts do not disturb each other: sheets, formats, cells, dress. */
export async function writeToExcel(context: Excel.RequestContext, changes: readonly Change[]): Promise<void> {
  const sheets = await readySheets(context, changes);
  const looks = changes.filter((change): change is LookChange => change.kind === "look");
  for (const look of looks) formatColumns(sheets.get(look.sheet)!, look);
  for (const change of changes) {
    if (change.kind === "cells") await writeCells(context, sheets.get(change.sheet)!, change);
  }
  for (const look of looks) await dressSheet(context, sheets.get(look.sheet)!, look);
  await context.sync();
}

/** The sheets that are written to, made where they are missing; nothing is begun where one is protected. */
async function readySheets(context: Excel.RequestContext, changes: readonly Change[]) {
  const { worksheets } = context.workbook;
  const names = [...new Set(changes.map((change) => change.sheet))];
  const found = names.map((name) => ({ name, sheet: worksheets.getItemOrNullObject(name) }));
  for (const { sheet } of found) sheet.load("name,protection/protected");
  await context.sync();
  const locked = found.find(({ sheet }) => !sheet.isNullObject && sheet.protection.protected);
  if (locked)
    throw new Error(`The sheet ${locked.name} is protected. Take its protection off (Review), then try again.`);
  return new Map(found.map(({ name, sheet }) => [name, sheet.isNullObject ? worksheets.add(name) : sheet]));
}

function formatColumns(sheet: Excel.Worksheet, look: LookChange): void {
  look.columns.forEach(({ format }, i) => {
    if (format !== null) setAll(sheet.getRangeByIndexes(1, i, ALL_ROWS - 1, 1), format);
  });
}

/** Excel takes one value for all cells of a range; its types know only arrays. */
function setAll(range: Excel.Range, format: string): void {
  range.numberFormat = format as unknown as string[][];
}

async function writeCells(context: Excel.RequestContext, sheet: Excel.Worksheet, change: CellsChange): Promise<void> {
  const width = Math.max(0, ...change.cells.map((row) => row.length));
  if (width === 0) return;
  let top = change.row;
  for (const rows of chunks(change.cells)) {
    const range = sheet.getRangeByIndexes(top, change.column, rows.length, width);
    range.load("numberFormat");
    await context.sync();
    context.application.suspendApiCalculationUntilNextSync();
    fill(range, rows, width);
    top += rows.length;
  }
  await context.sync();
}

function fill(range: Excel.Range, rows: readonly (readonly Written[])[], width: number): void {
  const contents = rows.map((row, r) =>
    Array.from({ length: width }, (_, c) => excelContent(row[c] ?? null, String(range.numberFormat[r]![c]))),
  );
  if (contents.some((row) => row.some(({ format }) => format !== null))) {
    range.numberFormat = contents.map((row) => row.map(({ format }) => format));
  }
  range.formulas = contents.map((row) => row.map(({ content }) => content));
}

/** Rows in portions that one request can carry. */
function* chunks(rows: readonly (readonly Written[])[]): Generator<readonly (readonly Written[])[]> {
  let portion: (readonly Written[])[] = [];
  let bytes = 0;
  for (const row of rows) {
    const size = JSON.stringify(row).length + row.length * 8;
    if (portion.length > 0 && bytes + size > BYTES_AT_ONCE) {
      yield portion;
      portion = [];
      bytes = 0;
    }
    portion.push(row);
    bytes += size;
  }
  if (portion.length > 0) yield portion;
}
