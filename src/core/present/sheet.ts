import type { Cell, Table } from "../table.js";
import type { Column } from "./column.js";

/** The columns of a sheet by key, in the order in which they stand. */
// biome-ignore lint/suspicious/noExplicitAny: a sheet holds columns of every type; RowOf gives each its own back
export type Columns = Readonly<Record<string, Column<any>>>;

/** A sheet: its name, its columns, and how many of them stay in sight. */
export type Sheet<C extends Columns = Columns> = {
  readonly name: string;
  readonly frozen: number;
  readonly columns: C;
};

/** What one column holds. */
type ValueOf<C> = C extends Column<infer T> ? T : never;

/** A row of a sheet as values, by key; an empty cell is null. */
export type RowOf<S extends Sheet> = { readonly [K in keyof S["columns"]]: ValueOf<S["columns"][K]> | null };

/** A sheet with its heads checked: each head stands once, for Excel repairs a file where one stands twice. */
export function sheet<C extends Columns>(name: string, frozen: number, columns: C): Sheet<C> {
  const heads = Object.values(columns).map((column) => column.head);
  if (new Set(heads).size !== heads.length) throw new Error(`a head stands twice in ${name}: ${heads.join(", ")}`);
  return { name, frozen, columns };
}

/** The heads of a sheet, in order. */
export const headsOf = (sheet: Sheet): readonly string[] => Object.values(sheet.columns).map((column) => column.head);

/** The keys of a sheet's columns, in order. */
export const keysOf = <S extends Sheet>(sheet: S): readonly (keyof S["columns"] & string)[] =>
  Object.keys(sheet.columns);

/** A row without anything in it. */
export function emptyRow<S extends Sheet>(sheet: S): RowOf<S> {
  return Object.fromEntries(Object.keys(sheet.columns).map((key) => [key, null])) as RowOf<S>;
}

/** One row as cells, in the order of the columns. */
export function cellsOf<S extends Sheet>(sheet: S, row: RowOf<S>): readonly Cell[] {
  return Object.entries(sheet.columns).map(([key, column]) => writeCell(column, row[key]));
}

/** One value as its cell. */
export const writeCell = <T>(column: Column<T>, value: T | null | undefined): Cell =>
  value === null || value === undefined ? null : column.write(value);

/** Rows as a table, ready for a worksheet. */
export function tableOf<S extends Sheet>(sheet: S, rows: readonly RowOf<S>[]): Table {
  return { name: sheet.name, heads: headsOf(sheet), rows: rows.map((row) => cellsOf(sheet, row)) };
}

/** Where each column of a sheet stands among heads (from 0), by key; a column that is not there is missing. */
export function placesOf<S extends Sheet>(
  sheet: S,
  heads: readonly Cell[],
): Readonly<Partial<Record<keyof S["columns"], number>>> {
  const keys = keysByHead(sheet);
  const places: Record<string, number> = {};
  for (const [at, head] of heads.entries()) {
    const key = keys.get(sameHead(head));
    if (key !== undefined && places[key] === undefined) places[key] = at;
  }
  return places as Partial<Record<keyof S["columns"], number>>;
}

/** What each sheet's columns are called, told once a sheet: cells ask for it one by one. */
const known = new WeakMap<Sheet, ReadonlyMap<string, string>>();

function keysByHead(sheet: Sheet): ReadonlyMap<string, string> {
  const keys =
    known.get(sheet) ?? new Map(Object.entries(sheet.columns).map(([key, { head }]) => [sameHead(head), key]));
  known.set(sheet, keys);
  return keys;
}

const sameHead = (head: Cell) =>
  String(head ?? "")
    .trim()
    .toLowerCase();

/** Rows of a table as values, by their heads: order does not matter, columns of the user's own are passed over. */
export function rowsOf<S extends Sheet>(sheet: S, table: Pick<Table, "heads" | "rows">): readonly RowOf<S>[] {
  const places = placesOf(sheet, table.heads) as Record<string, number | undefined>;
  const columns = Object.entries(sheet.columns);
  return table.rows.map(
    (cells) =>
      Object.fromEntries(
        columns.map(([key, column]) => [key, column.read(cells[places[key] ?? -1] ?? null)]),
      ) as RowOf<S>,
  );
}

/**
 * How well heads match a sheet, 0 to 1: the heads they share, of all the heads that either has. A table is known by its
 * sheet's name, else by its heads.
 */
export function likeness(sheet: Sheet, heads: readonly Cell[]): number {
  const shared = Object.keys(placesOf(sheet, heads)).length;
  const filled = heads.filter((head) => sameHead(head) !== "").length;
  return shared / (Object.keys(sheet.columns).length + filled - shared);
}
