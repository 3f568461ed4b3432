import type { Unit } from "../../quantity/notation/units.js";

/** What a column of a list holds. */
export type Role =
  | "designator"
  | "description"
  | "value"
  | "tolerance"
  | "watts"
  | "volts"
  | "rating"
  | "quantity"
  | "unit"
  | "partNumber"
  | "use"
  | "section"
  | "remarks"
  | "replacement"
  | "price"
  | "item";

/** A column's head: its role, the unit printed in it, and where it starts (a text column or a cell's index). */
export type Head = {
  readonly role: Role;
  readonly unit: Unit | null;
  readonly text: string;
  readonly start: number;
  readonly end: number;
};

/** A piece of a line: its text and where it starts (a text column or a cell's index). */
export type Piece = { readonly text: string; readonly start: number };

/** One cell of a row: what it holds, as printed, with the unit of its head. */
export type RowCell = { readonly role: Role; readonly text: string; readonly unit: Unit | null };

/**
 * One part's piece of a list: its lines, its cells and where it stands.
 *
 * `heading` is the kind heading above it ("MICA CONDENSERS, 500 VOLTS"); `table` numbers the runs of rows under one
 * head: ditto marks do not reach across.
 */
export type ListRow = {
  readonly lines: readonly number[];
  readonly cells: readonly RowCell[];
  readonly section: string | null;
  readonly heading: string | null;
  readonly table: number;
};

/**
 * A note of the document with its lines; `section` when it stands under a section's heading and speaks of it alone,
 * `heading` the kind heading above it.
 */
export type Note = {
  readonly lines: readonly number[];
  readonly text: string;
  readonly section: string | null;
  readonly heading?: string | null;
};

/** A document taken apart: rows, notes, and the lines that are neither. */
export type Layout = {
  readonly rows: readonly ListRow[];
  readonly notes: readonly Note[];
  readonly furniture: readonly number[];
  readonly unread: readonly number[];
  readonly remarks: readonly Note[];
};

/** The text of a row's cells of one role, joined; empty when there is none. */
export function cellText(row: ListRow, role: Role): string {
  return row.cells
    .filter((cell) => cell.role === role && cell.text !== "")
    .map((cell) => cell.text)
    .join(" ");
}
