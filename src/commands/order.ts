import {
  type Basket,
  basketOf,
  type DemandLine,
  type Infeasible,
  ORDER_SHEET,
  orderRows,
  type Plan,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import type { Book } from "./book.js";
import { offerPatches } from "./match.js";
import { leftOut, vendorsOf, type Wants } from "./orderBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { addRows, patchRows, writtenRow } from "./writeSheet.js";

/** What may be asked of a plan beside the vendors' own terms. */
export type OrderWishes = { readonly maxVendors: number | null; readonly without: readonly string[] };

/** The ordering problem of all open sets. */
export function bookBasket(book: Book, wants: Wants, wishes: OrderWishes = { maxVendors: null, without: [] }): Basket {
  return basketOf(wants.lines, vendorsOf(book, wants.offers), {
    maxVendors: wishes.maxVendors,
    excluded: [...new Set([...leftOut(book), ...wishes.without])],
  });
}

/** True where there is a plan. */
export const isPlan = (found: Plan | Infeasible): found is Plan => !("infeasible" in found);

/**
 * Writes a plan to Order, and each part's offer to Parts. Lines on the way or come stay; those still to be ordered are replaced.
 */
export function orderStep(book: Book, wants: Wants, basket: Basket, plan: Plan): Step {
  const rows = orderRows(plan, basket, wants.lines, wants.offers);
  if (rows.length === 0) return nothingToDo("Nothing is to be ordered");
  const vendors = new Set(rows.map(({ vendor }) => vendor)).size;
  return {
    name: `Write an order of ${counted(rows.length, "line")} from ${counted(vendors, "vendor")}`,
    changes: [...orderChanges(book, rows), ...partChanges(book, wants, plan)],
    overwrites: [],
    notes: [],
  };
}

function orderChanges(book: Book, rows: ReturnType<typeof orderRows>): readonly Change[] {
  const written = rows.map((row) => writtenRow(ORDER_SHEET, row));
  if (!book.order) return addRows(null, ORDER_SHEET, written);
  const empty = Object.fromEntries(Object.keys(ORDER_SHEET.columns).map((key) => [key, ""]));
  const open = book.order.rows.filter(({ values }) => values.state === null || values.state === "to order");
  const over = open.map(({ at }, index) => ({ at, cells: { ...empty, ...written[index] } }));
  const rest = written.slice(open.length);
  return [...patchRows(book.order, over), ...addRows(book.order, ORDER_SHEET, rest)];
}

function partChanges(book: Book, wants: Wants, plan: Plan): readonly Change[] {
  const { parts } = book;
  if (!parts) return [];
  const offerOf = new Map(plan.supplies.map(({ line, offer }) => [line, offer]));
  const planned = (line: DemandLine) => line.matches.find(({ offer }) => offer.id === offerOf.get(line.id));
  const patches = offerPatches(parts.rows, wants.lines, planned);
  return patchRows(parts, patches);
}

/** What became of a line of Order; what came is noted at the parts it is for. */
export function orderStateStep(
  book: Book,
  at: number,
  state: "to order" | "on the way" | "came" | "short" | "sent another",
): Step {
  const { order, parts } = book;
  const row = order?.rows.find((each) => each.at === at);
  if (!order || !row) return nothingToDo("No such line");
  const ids = new Set((row.values.forWhom ?? "").split(" "));
  const came = state === "came" || state === "sent another";
  const here = (parts?.rows ?? []).filter(({ values }) => ids.has(values.id ?? ""));
  const patches = here.map((part) => ({
    at: part.at,
    cells: { came: came ? (part.values.quantity ?? 1) : "" } as const,
  }));
  return {
    name: `${row.values.stockNumber ?? row.values.description}: ${state}`,
    changes: [
      ...patchRows(order, [{ at, cells: { state, came: came ? row.values.wanted : "" } }]),
      ...(parts ? patchRows(parts, patches) : []),
    ],
    overwrites: [],
    notes: [],
  };
}
