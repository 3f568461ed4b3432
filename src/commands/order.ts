import {
  type Basket,
  basketOf,
  type DemandLine,
  type Infeasible,
  ORDER_SHEET,
  orderRows,
  type Plan,
  withoutOffers,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import type { Book } from "./book.js";
import { moneyOf, priceFactor } from "./currencies.js";
import { offerPatches } from "./match.js";
import { leftOut, vendorsOf, type Wants } from "./orderBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, rowsInPlace, writtenRow } from "./writeSheet.js";

/** What may be asked of a plan beside the vendors' own terms: the most vendors, some left out, offers taken to be gone. */
export type OrderWishes = {
  readonly maxVendors: number | null;
  readonly without: readonly string[];
  readonly gone: readonly string[];
};

/** No wishes. */
export const NO_WISHES: OrderWishes = { maxVendors: null, without: [], gone: [] };

/** The ordering problem of all open sets. Offers whose currency has no rate are not in it (`moneyMissing` says so). */
export function bookBasket(book: Book, wants: Wants, wishes: OrderWishes = NO_WISHES): Basket {
  const money = moneyOf(book, wants.offers);
  const options = {
    maxVendors: wishes.maxVendors,
    excluded: [...new Set([...leftOut(book), ...wishes.without])],
  };
  const basket = basketOf(wants.lines, vendorsOf(book, wants.offers, money), options, (offer) =>
    priceFactor(money, offer),
  );
  return { ...withoutOffers(basket, wishes.gone), currency: money.own };
}

/** True where there is a plan. */
export const isPlan = (found: Plan | Infeasible): found is Plan => !("infeasible" in found);

/**
 * Writes a plan to Order, and each part's offer to Parts. Lines on the way or come stay; those still to be ordered are replaced.
 */
export function orderStep(book: Book, wants: Wants, basket: Basket, plan: Plan): Step {
  const { currencyOf } = moneyOf(book, wants.offers);
  const rows = orderRows(plan, basket, wants.lines, wants.offers, currencyOf);
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
  const open = (book.order?.rows ?? []).filter(({ values }) => values.state === null || values.state === "to order");
  return rowsInPlace(book.order, ORDER_SHEET, open, written);
}

function partChanges(book: Book, wants: Wants, plan: Plan): readonly Change[] {
  const { parts } = book;
  if (!parts) return [];
  const offerOf = new Map(plan.supplies.map(({ line, offer }) => [line, offer]));
  const planned = (line: DemandLine) => line.matches.find(({ offer }) => offer.id === offerOf.get(line.id));
  const patches = offerPatches(parts.rows, wants.lines, planned);
  return patchRows(parts, patches);
}
