import type { Cell } from "../core/index.js";
import type { HostCell, SheetCells } from "./host.js";

/** Cells in one answer of Excel; the web's answers end at 5 MB. */
const CELLS_AT_ONCE = 40_000;

const EMPTY: HostCell = { value: null, formula: null };

/** A sheet's cells from A1 on, or null where there is no such sheet. */
export async function readExcelSheet(context: Excel.RequestContext, name: string): Promise<SheetCells | null> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) return null;
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) return { sheet: name, rows: [] };
  const [height, width] = [used.rowIndex + used.rowCount, used.columnIndex + used.columnCount];
  const rows: HostCell[][] = [];
  const step = Math.max(1, Math.floor(CELLS_AT_ONCE / width));
  for (let top = 0; top < height; top += step) {
    const block = sheet.getRangeByIndexes(top, 0, Math.min(step, height - top), width);
    block.load("values,formulas");
    await context.sync();
    rows.push(...block.values.map((row, r) => row.map((value, c) => hostCell(value, block.formulas[r]![c]))));
  }
  return { sheet: name, rows };
}

/** Excel hands a text "=1+41" over as its own formula; a real formula differs from what it shows. */
function hostCell(value: Cell, formula: unknown): HostCell {
  const isFormula = typeof formula === "string" && formula.startsWith("=") && formula !== value;
  if (isFormula) return { value, formula };
  return value === "" || value === null ? EMPTY : { value, formula: null };
}
