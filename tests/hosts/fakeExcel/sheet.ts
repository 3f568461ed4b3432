import { Model } from "../../../src/hosts/library.js";

export type Value = string | number | boolean;
export type Stored = { readonly value: Value | null; readonly formula: string | null };

/** What the fake keeps of a sheet; plain data, so that undo is a copy. */
export type Sheet = {
  id: string;
  name: string;
  protected: boolean;
  cells: Record<string, Stored>;
  formats: Record<string, string>;
  columnFormats: Record<number, string>;
  widths: Record<number, number>;
  fills: Record<string, string>;
  folds: string[];
  closed: string[];
  hiddenRows: number[];
  frozen: string | null;
  filter: string | null;
  notes: Record<string, string>;
};

/** A refusal as Excel words it: a code and a message. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export const keyOf = (row: number, column: number) => `${row},${column}`;

export function newSheet(id: string, name: string): Sheet {
  const empty = {
    cells: {},
    formats: {},
    columnFormats: {},
    widths: {},
    fills: {},
    folds: [],
    closed: [],
    hiddenRows: [],
    notes: {},
  };
  return { id, name, protected: false, frozen: null, filter: null, ...structuredClone(empty) };
}

export function formatAt(sheet: Sheet, row: number, column: number): string {
  return sheet.formats[keyOf(row, column)] ?? (row > 0 ? sheet.columnFormats[column] : undefined) ?? "General";
}

/** What Excel makes of an entry: in a cell of text all stays text; elsewhere it guesses, and we are strict about it. */
export function entered(entry: Value, format: string): Stored | null {
  if (entry === "") return null;
  if (format === "@") return { value: String(entry), formula: null };
  if (typeof entry !== "string") return { value: entry, formula: null };
  if (entry.startsWith("'")) return { value: entry.slice(1), formula: null };
  if (entry.startsWith("=")) return { value: null, formula: entry };
  if (/^[+\-@]/.test(entry)) throw new Refusal("InvalidArgument", `Excel takes ${entry} for a formula`);
  if (/^(true|false)$/i.test(entry)) return { value: /^t/i.test(entry), formula: null };
  if (entry.trim() !== "" && Number.isFinite(Number(entry))) return { value: Number(entry), formula: null };
  if (/^\d+([/\-:]\d+)+$/.test(entry)) return { value: 45_000, formula: null };
  if (/^[\d.]+ ?%$/.test(entry)) return { value: Number.parseFloat(entry) / 100, formula: null };
  return { value: entry, formula: null };
}

/** The values of all formulas, worked out by a spreadsheet that is not ours. */
export function valuesOf(sheets: readonly Sheet[]): (sheet: Sheet, row: number, column: number) => Value {
  const model = new Model();
  for (const sheet of sheets) model.dispatch("CREATE_SHEET", { sheetId: sheet.id, name: `${sheet.name}`, position: 1 });
  for (const sheet of sheets) {
    for (const [key, { value, formula }] of Object.entries(sheet.cells)) {
      const [row, col] = key.split(",").map(Number);
      const content = formula ?? (typeof value === "string" ? `'${value}` : String(value).toUpperCase());
      model.dispatch("UPDATE_CELL", { sheetId: sheet.id, row, col, content });
    }
  }
  return (sheet, row, col) => {
    const stored = sheet.cells[keyOf(row, col)];
    if (!stored) return "";
    return stored.formula === null
      ? stored.value!
      : (model.getters.getEvaluatedCell({ sheetId: sheet.id, row, col }).value ?? "");
  };
}

/** The block of cells that hold anything, or null. */
export function usedBlock(sheet: Sheet): { row: number; column: number; rows: number; columns: number } | null {
  const places = Object.keys(sheet.cells).map((key) => key.split(",").map(Number) as [number, number]);
  if (places.length === 0) return null;
  const [rows, columns] = [places.map(([row]) => row), places.map(([, column]) => column)];
  const [row, column] = [Math.min(...rows), Math.min(...columns)];
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}
