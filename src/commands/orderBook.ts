import {
  attempt,
  type Demand,
  type DemandLine,
  demandLines,
  type Offer,
  type OffersRow,
  type OnHandRow,
  offerOfRow,
  PartsError,
  type PartsRow,
  ratingsOfRow,
  type Spares,
  type Vendor,
} from "../core/index.js";
import { type Book, projectOf, rulesOf, valuesOf } from "./book.js";
import { offerRows } from "./bringInOffers.js";
import { type Money, moneyOf } from "./currencies.js";
import { isTheirs } from "./fill.js";
import { cameFor, hadByPart, stillWanted } from "./had.js";
import type { ViewRow } from "./openSheet.js";
import { boughtByOther, isBought } from "./overview.js";
import { sparesKey } from "./spares.js";

/** What one's own drawers are called where their rows don't say. */
export const OWN = "On hand";

/** A part that can't be brought to the vendors, and why. */
export type NotAsked = { readonly row: PartsRow; readonly why: string };

/** What all open sets want of the vendors, and the offers in play. */
export type Wants = {
  readonly demands: readonly Demand[];
  readonly lines: readonly DemandLine[];
  readonly offers: readonly Offer[];
  readonly notAsked: readonly NotAsked[];
};

/** True for a part that may have to be bought: to be replaced, not fitted, its set open. */
function isWanted(book: Book, row: PartsRow): boolean {
  const state = projectOf(book, row.project)?.state ?? "open";
  return isBought(row) && state === "open" && row.fitted === null;
}

/** The spares of each kind by the sheet Settings. */
export function sparesOf(book: Book): Spares {
  const { settings } = rulesOf(book, null);
  const ratio = (key: string) => Math.max(0, Number(settings[key]) || 0) / 100;
  return {
    resistor: ratio(sparesKey("resistor")),
    capacitor: ratio(sparesKey("capacitor")),
    other: ratio(sparesKey("other")),
  };
}

/**
 * The offers that can be read; a row that can't is passed over, for it says so in its own "unclear" cell. What is on hand
 * costs nothing.
 */
export function offersOf(book: Book): readonly Offer[] {
  const own = new Set<unknown>(valuesOf(book.onHand));
  const offerIn = (row: OffersRow | OnHandRow): Offer =>
    own.has(row) ? { ...offerOfRow({ ...row, vendor: row.vendor ?? OWN }), breaks: [[1, 0]] } : offerOfRow(row);
  return offerRows(book).flatMap((row) =>
    attempt(
      () => [offerIn(row)],
      () => [],
    ),
  );
}

/**
 * What is still to be bought over all open sets, a part that stands in two lists once, matched against the offers in play.
 *
 * What has come and what is on the way is taken off; where a delivery was short, the rest is wanted again.
 *
 * @param spares How many pieces more to have; those of the sheet Settings when left out.
 */
export function wantsOf(book: Book, spares: Spares = sparesOf(book)): Wants {
  const offers = offersOf(book);
  const had = hadByPart(book);
  const demands: Demand[] = [];
  const notAsked: NotAsked[] = [];
  const byOther = boughtByOther(book);
  const asking = (row: PartsRow) => isWanted(book, row) && !byOther.has(row.id ?? "");
  for (const row of (book.parts?.rows ?? []).filter(({ values }) => asking(values))) {
    try {
      const has = had.get(row.values.id ?? "") ?? [];
      const byHand = Math.max(0, (row.values.came ?? 0) - cameFor(has));
      demands.push(...stillWanted(demandsOf(book, row), has, byHand, offers));
    } catch (error) {
      if (!(error instanceof PartsError)) throw error;
      notAsked.push({ row: row.values, why: error.message });
    }
  }
  return { demands, lines: demandLines(demands, offers, spares), offers, notAsked };
}

/** What stands between the offers of a part that is made up of several. */
export const BETWEEN_OFFERS = " + ";

/** A made-up value asks for each of its pieces; each has an offer picked for it, or all have the same. */
function demandsOf(book: Book, row: ViewRow<NonNullable<Book["parts"]>["sheet"]>): readonly Demand[] {
  const { id, project, perSet, offer, alike } = row.values;
  const picks = isTheirs(row, "offer") && offer !== null ? offer.split(BETWEEN_OFFERS) : [];
  return ratingsOfRow(row.values, rulesOf(book, project)).map((ratings, nth, all) => ({
    part: id ?? "",
    ratings,
    pieces: perSet ?? 1,
    pick: (picks.length === all.length ? picks[nth] : picks[0]) ?? null,
    alike: alike === null ? null : [project, alike, ...(all.length > 1 ? [nth] : [])].join(" "),
  }));
}

/** The vendors' terms; those left out are not among them. Own stock is a vendor whose price and shipping are nothing. */
export function vendorsOf(
  book: Book,
  offers: readonly Offer[],
  money: Money = moneyOf(book, offers),
): readonly Vendor[] {
  const rows = valuesOf(book.vendors);
  const names = [...new Set(offers.map(({ vendor }) => vendor))];
  return names.map((id) => {
    const row = rows.find(({ vendor }) => vendor === id);
    const currency = money.currencyOf(id);
    return {
      id,
      shipping: row?.shipping ?? 0,
      freeFrom: row?.freeFrom ?? null,
      minimumOrder: row?.minimumOrder ?? null,
      smallOrderFee: row?.smallOrderFee ?? null,
      // A vendor without a rate has no offer in the basket, or sells for nothing: its rate then weighs nothing.
      rate: money.rateOf(currency) ?? 1,
      currency,
    };
  });
}

/** The vendors that the user leaves out of the plan. */
export const leftOut = (book: Book): readonly string[] =>
  valuesOf(book.vendors).flatMap(({ vendor, leaveOut }) => (leaveOut && vendor ? [vendor] : []));
