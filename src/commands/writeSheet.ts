import { type RowOf, type Sheet, writeCell } from "../core/index.js";
import type { Change, Written } from "../hosts/host.js";
import type { View } from "./openSheet.js";

/** What to put into one row of a sheet: values or formulas by key; what is not named stays as it is. */
export type RowCells<S extends Sheet> = Readonly<Partial<Record<keyof S["columns"], Written>>>;

/** A row's values as cells to be written; an empty value leaves its cell alone. */
export function writtenRow<S extends Sheet>(sheet: S, row: RowOf<S>): RowCells<S> {
  const cells = Object.entries(sheet.columns).map(([key, column]) => [key, writeCell(column, row[key])] as const);
  return Object.fromEntries(cells.filter(([, cell]) => cell !== null && cell !== "")) as RowCells<S>;
}

/** One value of a row as the cell that is to be written, empty where there is none. */
export function cellIn<S extends Sheet>(sheet: S, key: keyof S["columns"] & string, row: RowOf<S>): Written {
  return writeCell(sheet.columns[key]!, row[key]) ?? "";
}

/** A structured sheet that is not there yet: the sheet, its look, its heads, and rows from the second on. */
export function newSheet<S extends Sheet>(sheet: S, rows: readonly RowCells<S>[]): readonly Change[] {
  const columns = Object.entries(sheet.columns);
  const body = rows.map((row) => columns.map(([key]) => row[key] ?? null));
  const heads = columns.map(([, column]) => column.head);
  return [
    { kind: "sheet", sheet: sheet.name },
    lookOf(sheet),
    { kind: "cells", sheet: sheet.name, row: 0, column: 0, cells: [heads, ...body] },
  ];
}

/** How a sheet looks: widths, formats, tints and folding groups of its columns, heads frozen, filter on. */
export function lookOf(sheet: Sheet): Change {
  const columns = Object.values(sheet.columns).map(({ width, format, tint, group, folded }) => ({
    width,
    format,
    tint,
    group,
    folded,
  }));
  return { kind: "look", sheet: sheet.name, columns, frozenColumns: sheet.frozen, filter: true };
}

/** Cells of rows that stand already, as one block; what lies between them is left as it is. */
export function patchRows<S extends Sheet>(
  view: View<S>,
  patches: readonly { readonly at: number; readonly cells: RowCells<S> }[],
): readonly Change[] {
  const places = view.places as Record<string, number | undefined>;
  const dots = patches.flatMap(({ at, cells }) =>
    Object.entries(cells).flatMap(([key, written]) => {
      const column = places[key];
      return column === undefined || written === undefined ? [] : [{ at, column, written: written as Written }];
    }),
  );
  if (dots.length === 0) return [];
  const row = dots.reduce((least, dot) => Math.min(least, dot.at), Number.POSITIVE_INFINITY);
  const column = dots.reduce((least, dot) => Math.min(least, dot.column), Number.POSITIVE_INFINITY);
  const height = 1 + dots.reduce((most, dot) => Math.max(most, dot.at), 0) - row;
  const width = 1 + dots.reduce((most, dot) => Math.max(most, dot.column), 0) - column;
  const cells = Array.from({ length: height }, (): Written[] => new Array<Written>(width).fill(null));
  for (const dot of dots) cells[dot.at - row]![dot.column - column] = dot.written;
  return [{ kind: "cells", sheet: view.name, row, column, cells }];
}

/** Rows after the last one; the sheet is made where it is missing. */
export function addRows<S extends Sheet>(
  view: View<S> | null,
  sheet: S,
  rows: readonly RowCells<S>[],
): readonly Change[] {
  if (view === null) return newSheet(sheet, rows);
  return patchRows(
    view,
    rows.map((cells, index) => ({ at: view.end + index, cells })),
  );
}

/** Empty cells for every column of a sheet. */
export const emptyCells = <S extends Sheet>(sheet: S): RowCells<S> =>
  Object.fromEntries(Object.keys(sheet.columns).map((key) => [key, ""])) as RowCells<S>;

/**
 * Rows in the place of others: each over one that stands there, what is left over emptied, further ones behind the last
 * row. The sheet is made where it is missing.
 *
 * @param old Where the rows stand that they take the place of.
 */
export function rowsInPlace<S extends Sheet>(
  view: View<S> | null,
  sheet: S,
  old: readonly { readonly at: number }[],
  rows: readonly RowCells<S>[],
): readonly Change[] {
  const empty = emptyCells(sheet);
  const over = old.map(({ at }, index) => ({ at, cells: { ...empty, ...rows[index] } }));
  const rest = rows.slice(old.length);
  return [...(view ? patchRows(view, over) : []), ...(rest.length > 0 || !view ? addRows(view, sheet, rest) : [])];
}
