import {
  type Demand,
  type DemandLine,
  demandLines,
  type Offer,
  offerOfRow,
  PartsError,
  type PartsRow,
  ratingsOfRow,
  type Vendor,
} from "../core/index.js";
import { type Book, projectOf, rulesOf, valuesOf } from "./book.js";
import { offerRows } from "./bringInOffers.js";
import { isTheirs } from "./fill.js";
import type { ViewRow } from "./openSheet.js";
import { boughtByOther, isBought, isOrdered } from "./overview.js";

/** What one's own drawers are called where their rows don't say. */
const OWN = "On hand";

/** A part that can't be brought to the vendors, and why. */
export type NotAsked = { readonly row: PartsRow; readonly why: string };

/** What all open sets want of the vendors, and the offers in play. */
export type Wants = {
  readonly demands: readonly Demand[];
  readonly lines: readonly DemandLine[];
  readonly offers: readonly Offer[];
  readonly notAsked: readonly NotAsked[];
};

/** True for a part that is still to be bought: to be replaced, its set open, nothing on the way, in hand or fitted. */
function isWanted(book: Book, row: PartsRow): boolean {
  const state = projectOf(book, row.project)?.state ?? "open";
  return isBought(row) && state === "open" && row.fitted === null && (row.came ?? 0) === 0 && !isOrdered(book, row);
}

/**
 * The offers that can be read; a row that can't is passed over, for it says so in its own "unclear" cell. What is on hand
 * costs nothing.
 */
export function offersOf(book: Book): readonly Offer[] {
  const own = new Set<unknown>(valuesOf(book.onHand));
  return offerRows(book).flatMap((row) => {
    try {
      if (!own.has(row)) return [offerOfRow(row)];
      return [{ ...offerOfRow({ ...row, vendor: row.vendor ?? OWN }), breaks: [[1, 0] as const] }];
    } catch (error) {
      if (error instanceof PartsError) return [];
      throw error;
    }
  });
}

/**
 * What is to be bought over all open sets, a part that stands in two lists once, matched against the offers in play.
 *
 * @param spares How many pieces more to have of each, as a ratio.
 */
export function wantsOf(book: Book, spares = 0): Wants {
  const offers = offersOf(book);
  const demands: Demand[] = [];
  const notAsked: NotAsked[] = [];
  const byOther = boughtByOther(book);
  const asking = (row: PartsRow) => isWanted(book, row) && !byOther.has(row.id ?? "");
  for (const row of (book.parts?.rows ?? []).filter(({ values }) => asking(values))) {
    try {
      demands.push(...demandsOf(book, row));
    } catch (error) {
      if (!(error instanceof PartsError)) throw error;
      notAsked.push({ row: row.values, why: error.message });
    }
  }
  return { demands, lines: demandLines(demands, offers, spares), offers, notAsked };
}

/** A made-up value asks for each of its pieces. */
function demandsOf(book: Book, row: ViewRow<NonNullable<Book["parts"]>["sheet"]>): readonly Demand[] {
  const pick = isTheirs(row, "offer") ? row.values.offer : null;
  return ratingsOfRow(row.values, rulesOf(book, row.values.project)).map((ratings) => ({
    part: row.values.id ?? "",
    ratings,
    pieces: row.values.perSet ?? 1,
    pick,
  }));
}

/** The vendors' terms; those left out are not among them. Own stock is a vendor whose price and shipping are nothing. */
export function vendorsOf(book: Book, offers: readonly Offer[]): readonly Vendor[] {
  const rows = valuesOf(book.vendors);
  const names = [...new Set(offers.map(({ vendor }) => vendor))];
  return names.map((id) => {
    const row = rows.find(({ vendor }) => vendor === id);
    return {
      id,
      shipping: row?.shipping ?? 0,
      freeFrom: row?.freeFrom ?? null,
      minimumOrder: row?.minimumOrder ?? null,
      smallOrderFee: row?.smallOrderFee ?? null,
      rate: row?.rate ?? 1,
    };
  });
}

/** The vendors that the user leaves out of the plan. */
export const leftOut = (book: Book): readonly string[] =>
  valuesOf(book.vendors).flatMap(({ vendor, leaveOut }) => (leaveOut && vendor ? [vendor] : []));
