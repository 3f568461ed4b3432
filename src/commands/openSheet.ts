import { findSheet, headsOf, likeness, PartsError, placesOf, type RowOf, rowsOf, type Sheet } from "../core/index.js";
import type { Host, HostCell, SheetCells } from "../hosts/host.js";

/**
 * One row of a sheet as it stands: where (from 0), its values by key, the formulas among them, and what a person typed that
 * its column can't read: it counts as an empty cell.
 */
export type ViewRow<S extends Sheet> = {
  readonly at: number;
  readonly values: RowOf<S>;
  readonly unread: Readonly<Partial<Record<keyof S["columns"], string>>>;
  readonly formulas: Readonly<Partial<Record<keyof S["columns"], string>>>;
};

/** A structured sheet of the open workbook: its own name, where its columns stand, its rows, and the first free row. */
export type View<S extends Sheet> = {
  readonly sheet: S;
  readonly name: string;
  readonly heads: readonly string[];
  readonly places: Readonly<Partial<Record<keyof S["columns"], number>>>;
  readonly rows: readonly ViewRow<S>[];
  readonly end: number;
};

/** Of a sheet with the right name at least this much must be ours; else it is a sheet of the user's own. */
const OURS = 0.3;

/**
 * A structured sheet, found by its name or else by its heads; null where the workbook has none.
 *
 * @throws PartsError "conflict" where a sheet of that name holds something else.
 */
export async function openSheet<S extends Sheet>(host: Host, sheet: S): Promise<View<S> | null> {
  const names = await host.sheets();
  const exact = names.find((name) => name.toLowerCase() === sheet.name.toLowerCase());
  const cells = exact === undefined ? null : await host.read(exact);
  if (cells !== null) return ours(sheet, cells);
  const all = await Promise.all(names.map((name) => host.read(name)));
  const headed = all.flatMap((cells) => (cells ? [{ name: cells.sheet, heads: headCells(cells) }] : []));
  const found = findSheet(sheet, headed);
  return found === null ? null : viewOf(sheet, all.find((cells) => cells?.sheet === found) ?? null);
}

function ours<S extends Sheet>(sheet: S, cells: SheetCells): View<S> | null {
  if (!cells.rows.some((row) => row.some(isFilled))) return null;
  if (likeness(sheet, headCells(cells)) >= OURS) return viewOf(sheet, cells);
  const wanted = "Rename that sheet, then do this again.";
  throw new PartsError("conflict", `The name "${cells.sheet}" and what stands in that sheet`, wanted);
}

const headCells = (cells: SheetCells) => (cells.rows[0] ?? []).map((cell) => cell.value);

function viewOf<S extends Sheet>(sheet: S, cells: SheetCells | null): View<S> | null {
  if (cells === null) return null;
  const heads = headCells(cells).map((head) => String(head ?? ""));
  const places = placesOf(sheet, heads);
  const body = cells.rows.map((row, at) => ({ row, at })).slice(1);
  const filled = body.filter(({ row }) => row.some(isFilled));
  const values = rowsOf(sheet, { heads, rows: filled.map(({ row }) => row.map(answerIn)) });
  const rows = filled.map(({ row, at }, index) => ({
    at,
    values: values[index]!,
    unread: unreadOf(places, row, values[index]!),
    formulas: formulasOf(places, row),
  }));
  return { sheet, name: cells.sheet, heads, places, rows, end: (filled.at(-1)?.at ?? 0) + 1 };
}

/** What a cell says: a formula that ends in an error (#N/A) says nothing, so that its part counts as not decided. */
const answerIn = ({ value, formula }: HostCell) =>
  formula !== null && typeof value === "string" && value.startsWith("#") ? null : value;

const isFilled = (cell: HostCell) => cell.formula !== null || (cell.value !== null && cell.value !== "");

function formulasOf<S extends Sheet>(places: View<S>["places"], row: readonly HostCell[]) {
  const found = Object.entries(places as Record<string, number>).flatMap(([key, column]) => {
    const formula = row[column]?.formula;
    return formula ? [[key, formula] as const] : [];
  });
  return Object.fromEntries(found) as ViewRow<S>["formulas"];
}

function unreadOf<S extends Sheet>(places: View<S>["places"], row: readonly HostCell[], values: RowOf<S>) {
  const found = Object.entries(places as Record<string, number>).flatMap(([key, column]) => {
    const cell = row[column];
    const isUnread = cell && cell.formula === null && isFilled(cell) && values[key] === null;
    return isUnread ? [[key, String(cell.value)] as const] : [];
  });
  return Object.fromEntries(found) as ViewRow<S>["unread"];
}

/** Where a sheet's columns stand: as they do, or as they will once it is made. */
export function targetOf<S extends Sheet>(
  view: View<S> | null,
  sheet: S,
): Pick<View<S>, "name" | "places" | "heads" | "end"> {
  return view ?? { name: sheet.name, places: placesOf(sheet, headsOf(sheet)), heads: headsOf(sheet), end: 1 };
}
