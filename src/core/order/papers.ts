import type { Basket, Plan } from "../plan.js";
import type { Table } from "../table.js";

/** What a line of a basket was asked for: parts of sets, each with its pieces; what is bought beyond them is spare. */
export type Asked = {
  readonly id: string;
  readonly demands: readonly { readonly part: string; readonly pieces: number }[];
};

/** So many pieces of an offer for one part; `part` is null for spares that go to stock. */
export type Handout = { readonly offer: string; readonly part: string | null; readonly pieces: number };

/**
 * Who gets what of an order: the pieces of each offer part by part, in the order they were asked for, and the rest to stock.
 */
export function handoutsOf(basket: Basket, plan: Plan, asked: readonly Asked[]): readonly Handout[] {
  const wants = new Map(asked.map(({ id, demands }) => [id, demands.map((demand) => ({ ...demand }))]));
  const packs = new Map(basket.offers.map(({ id, pack }) => [id, pack]));
  return plan.orders.flatMap(({ offer, units }) => {
    const given = plan.supplies.filter((supply) => supply.offer === offer).flatMap((supply) => dealt(supply, wants));
    const rest = units * packs.get(offer)! - given.reduce((sum, { pieces }) => sum + pieces, 0);
    return rest > 0 ? [...given, { offer, part: null, pieces: rest }] : given;
  });
}

/** The pieces of one supply, part by part; what a part has got is taken off what it wants. */
function dealt(
  supply: Plan["supplies"][number],
  wants: ReadonlyMap<string, { part: string; pieces: number }[]>,
): Handout[] {
  let left = supply.pieces;
  const handouts: Handout[] = [];
  for (const want of wants.get(supply.line) ?? []) {
    const pieces = Math.min(left, want.pieces);
    if (pieces === 0) continue;
    want.pieces -= pieces;
    left -= pieces;
    handouts.push({ offer: supply.offer, part: want.part, pieces });
  }
  return handouts;
}

/** A line of an order as the sheet Order has it; counts are sales units, money is in the vendor's currency. */
export type OrderedLine = {
  readonly vendor: string | null;
  readonly stockNumber: string | null;
  readonly description: string | null;
  readonly units: number | null;
  readonly pack: number | null;
  readonly price: number | null;
  readonly cost: number | null;
  readonly currency: string | null;
};

/** One order sheet for each vendor, by its name: its own numbers, quantities in its sales units, prices in its currency. */
export function orderSheets(lines: readonly OrderedLine[]): readonly Table[] {
  const vendors = [...new Set(lines.map(({ vendor }) => vendor ?? ""))];
  return vendors.map((name) => ({
    name,
    heads: ORDER_SHEET_HEADS,
    rows: lines
      .filter(({ vendor }) => (vendor ?? "") === name)
      .map((line) => [
        ...[line.stockNumber, line.description, line.units, line.pack, (line.units ?? 0) * (line.pack ?? 1)],
        ...[line.price, line.cost, line.currency],
      ]),
  }));
}

/** The heads of a vendor's order sheet. */
export const ORDER_SHEET_HEADS: readonly string[] = [
  "stock number",
  "description",
  "units",
  "pack",
  "pieces",
  "price",
  "cost",
  "currency",
];

/**
 * A table as plain CSV (RFC 4180): commas, quotes where needed, lines ended by CR LF. Numbers with a point, money to the cent.
 *
 * A text that a spreadsheet would take for a formula gets an apostrophe before it.
 */
export function csvOf({ heads, rows }: Table): string {
  const cell = (value: Table["rows"][number][number]) =>
    typeof value === "number" ? String(Number(value.toFixed(4))) : quoted(String(value ?? ""));
  return [heads, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

function quoted(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
