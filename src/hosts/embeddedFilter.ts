import type { Model, StoredCell, WorkbookData, Zone } from "./library.js";
import type { Step } from "./step.js";

/** Filter buttons come with a table in the library: one without a style of its own. */
const PLAIN_TABLE = {
  hasFilters: true,
  totalRow: false,
  firstColumn: false,
  lastColumn: false,
  numberOfHeaders: 1,
  bandedRows: false,
  bandedColumns: false,
  automaticAutofill: false,
  styleId: "None",
};

/** Puts filter buttons on the first row of a block. */
export function addFilter(model: Model, sheetId: string, zone: Zone): Step {
  const ranges = [model.getters.getRangeDataFromZone(sheetId, zone)];
  return ["CREATE_TABLE", { sheetId, ranges, config: PLAIN_TABLE, tableType: "static" }];
}

/** Takes the filter buttons of a sheet away. */
export function removeFilters(model: Model, sheetId: string): Step[] {
  const tables = model.getters.getCoreTables(sheetId);
  return tables.map((table) => ["REMOVE_TABLE", { sheetId, target: [table.range.zone] }]);
}

/** A workbook's data without our filter buttons: as tables they would leave it under names that nobody gave. */
export function withoutFilters(data: WorkbookData): WorkbookData {
  const isOurs = (table: { readonly config?: { readonly styleId?: string } }) =>
    table.config?.styleId === PLAIN_TABLE.styleId;
  return {
    ...data,
    sheets: data.sheets.map((sheet) => ({ ...sheet, tables: sheet.tables.filter((table) => !isOurs(table)) })),
  };
}

/** The last row of a sheet that holds anything, counting from 0; 0 for an empty sheet. */
export function lastRow(model: Model, sheetId: string): number {
  const positions = model.getters.getCells(sheetId).map(({ id }) => model.getters.getCellPosition(id));
  return positions.reduce((last, at) => (isFilled(model.getters.getCell(at)) ? Math.max(last, at.row) : last), 0);
}

const isFilled = (stored: StoredCell | undefined) => !!stored && (stored.isFormula || stored.content !== "");
