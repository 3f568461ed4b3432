import {
  type Cell,
  ORDER_SHEET_HEADS,
  type OrderRow,
  orderSheets,
  type PartsRow,
  readForWhom,
  sheetNames,
  type Table,
} from "../core/index.js";
import type { Change, ColumnLook, Host, Written } from "../hosts/host.js";
import { columnName } from "./a1.js";
import { type Book, valuesOf } from "./book.js";
import { isOwn } from "./deliveries.js";
import { piecesOf } from "./had.js";
import { counted, nothingToDo, type Step } from "./step.js";

const WHO = "Who gets what";
const SPARES = "Spares to stock";
const WHO_HEADS = ["set", "section", "designator", "id", "pieces", "vendor", "stock number", "description", "state"];
const SPARES_HEADS = ["stock number", "description", "vendor", "pieces over", "put in stock"];
const COST = ORDER_SHEET_HEADS.indexOf("cost");

/** True for a line that is still to be ordered from a vendor. */
const isToOrder = (book: Book, line: OrderRow): boolean =>
  (line.state === null || line.state === "to order") && !isOwn(book, line);

/** An order sheet for each vendor that something is still to be ordered from. */
export const vendorOrders = (book: Book): readonly Table[] =>
  orderSheets(valuesOf(book.order).filter((line) => isToOrder(book, line)));

/** Who gets what: set by set, each part with the pieces of each offer that are for it. */
export function whoGetsWhat(book: Book): Table {
  const parts = new Map(valuesOf(book.parts).map((row) => [row.id, row]));
  const rows = valuesOf(book.order).flatMap((line) =>
    readForWhom(line.forWhom).map(({ part, pieces }) => whoRow(parts.get(part), part, pieces, line)),
  );
  return { name: WHO, heads: WHO_HEADS, rows: [...rows].sort((a, b) => compare(a[0], b[0]) || compare(a[1], b[1])) };
}

const compare = (a: Cell | undefined, b: Cell | undefined) => String(a ?? "").localeCompare(String(b ?? ""));

const whoRow = (row: PartsRow | undefined, part: string, pieces: number, line: OrderRow): readonly Cell[] => [
  ...[row?.project ?? null, row?.section ?? null, row?.designator ?? null, part, pieces],
  ...[line.vendor, line.stockNumber, line.description, line.state],
];

/** What an order leaves over for the drawers. */
export function sparesToStock(book: Book): Table {
  const rows = valuesOf(book.order).flatMap((line): (readonly Cell[])[] => {
    const asked = readForWhom(line.forWhom).reduce((sum, { pieces }) => sum + pieces, 0);
    const over = piecesOf(line) - asked;
    return over > 0 && !isOwn(book, line)
      ? [[line.stockNumber, line.description, line.vendor, over, line.stocked]]
      : [];
  });
  return { name: SPARES, heads: SPARES_HEADS, rows };
}

/**
 * Writes the papers of the order: a sheet for each vendor to order from, who gets what, and the spares.
 *
 * Written again they take the place of what stood there. Sheets of vendors from whom nothing is ordered any more are
 * emptied; those of vendors whose order has gone out stay as they were sent.
 */
export async function orderPapersStep(host: Host, book: Book): Promise<Step> {
  const vendors = vendorOrders(book);
  if (valuesOf(book.order).length === 0) return nothingToDo("No order stands in the sheet yet");
  const old = await papersThere(host);
  const [who, spares] = [whoGetsWhat(book), sparesToStock(book)];
  const wanted = [...vendors.map((table) => ({ ...table, name: `Order ${table.name}` })), who, spares];
  const named = sheetNames(
    wanted.map(({ name }) => name),
    (await host.sheets()).filter((name) => !old.has(name)),
  );
  const papers = wanted.map((table, i) => ({ ...table, name: named[i]! }));
  const sent = valuesOf(book.order).map(({ vendor }) => sheetNames([`Order ${vendor ?? ""}`])[0]);
  const stale = [...old.keys()].filter((name) => !papers.some((paper) => paper.name === name) && !sent.includes(name));
  return {
    name: `Write the order sheets of ${counted(vendors.length, "vendor")}, who gets what, and the spares`,
    changes: [
      ...papers.flatMap((paper) => paperChanges(paper, old.get(paper.name) ?? 0)),
      ...stale.map((name) => cellsOver(name, [ORDER_SHEET_HEADS], old.get(name)!)),
    ],
    overwrites: [],
    notes: stale.length > 0 ? [`${stale.join(", ")} emptied: nothing is ordered there any more.`] : [],
  };
}

/** Sheets of ours that stand already, known by their heads, with how many rows they have. */
async function papersThere(host: Host): Promise<ReadonlyMap<string, number>> {
  const known = [ORDER_SHEET_HEADS, WHO_HEADS, SPARES_HEADS].map((heads) => heads.join("|"));
  const sheets = await Promise.all((await host.sheets()).map((name) => host.read(name)));
  return new Map(
    sheets.flatMap((cells) => {
      const heads = (cells?.rows[0] ?? []).map(({ value }) => String(value ?? "")).join("|");
      return cells && known.some((each) => heads.startsWith(each)) ? [[cells.sheet, cells.rows.length] as const] : [];
    }),
  );
}

function paperChanges(paper: Table, oldRows: number): readonly Change[] {
  const isOrder = paper.heads === ORDER_SHEET_HEADS;
  const rows: Written[][] = [paper.heads, ...paper.rows].map((row) => row.map((cell) => cell ?? ""));
  const total = isOrder ? [totalRow(paper)] : [];
  return [
    { kind: "sheet", sheet: paper.name },
    { kind: "look", sheet: paper.name, columns: paper.heads.map(lookOf), frozenColumns: 1, filter: true },
    cellsOver(paper.name, [...rows, ...total], oldRows),
  ];
}

/** The sum of the goods below them, live, so that a line taken out by hand is taken off. */
function totalRow({ rows, heads }: Table): Written[] {
  const column = columnName(COST);
  const cells: Written[] = heads.map(() => "");
  cells[COST - 1] = "goods";
  cells[COST] = { formula: `=SUM(${column}2:${column}${rows.length + 1})` };
  const currencies = new Set(rows.map((row) => row[COST + 1]));
  cells[COST + 1] = currencies.size === 1 ? (rows[0]![COST + 1] ?? "") : "";
  return cells;
}

/** Rows from the head on, and blanks over what stood below them. */
function cellsOver(sheet: string, rows: readonly (readonly Written[])[], oldRows: number): Change {
  const width = Math.max(ORDER_SHEET_HEADS.length, rows[0]?.length ?? 0, WHO_HEADS.length);
  const blank = Array.from({ length: Math.max(0, oldRows - rows.length) }, (): Written[] => []);
  const cells = [...rows, ...blank].map((row) => Array.from({ length: width }, (_, i) => row[i] ?? ""));
  return { kind: "cells", sheet, row: 0, column: 0, cells };
}

const WIDE = /description/;
const FORMATS: Readonly<Record<string, string>> = { price: "0.0000", cost: "0.00", "stock number": "@" };

const lookOf = (head: string): ColumnLook => ({
  width: WIDE.test(head) ? 320 : 110,
  format: FORMATS[head] ?? null,
  tint: "worked",
  group: null,
  folded: false,
});
