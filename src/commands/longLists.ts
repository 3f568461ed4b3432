import { namedColumns, type Offer, type OffersRow, type Wanted } from "../core/index.js";
import type { Host } from "../hosts/host.js";
import type { KeptList, LongLists, TakenList } from "../longLists/port.js";
import { type Book, valuesOf } from "./book.js";
import { bringInOffersStep, type VendorList } from "./bringInOffers.js";
import { matchStep } from "./match.js";
import { type Wants, wantsOf } from "./orderBook.js";
import { nothingToDo, type Step } from "./step.js";
import { together } from "./together.js";

export type { KeptList, LongLists, TakenList, TriedList } from "../longLists/port.js";

/** The best offers of each long list that come into play for one want: room for other vendors, packs and breaks. */
const IN_PLAY = 8;

/** Rows of this vendor that stand in Offers already, by what they are known by. */
function standing(book: Book, vendor: string): readonly Pick<Offer, "stockNumber" | "description">[] {
  const own = (row: OffersRow) => row.vendor === vendor && row.kind !== null;
  return valuesOf(book.offers)
    .filter(own)
    .map(({ stockNumber, description }) => ({ stockNumber, description: description ?? "" }));
}

/** A kept list as far as it goes into the sheet. */
function partOf(book: Book, kept: KeptList, offers: readonly Offer[]): VendorList {
  const row = valuesOf(book.vendors).find(({ vendor }) => vendor === kept.vendor);
  return {
    ...{ vendor: kept.vendor, listDate: kept.listDate, offers, refused: [] },
    currency: row?.currency ?? null,
    columns: row?.columns ?? "",
    whole: { offers: kept.offers, refused: kept.refused },
  };
}

/**
 * What the sheet is to know of a long list that was taken in: its date and size in Vendors, and what became of the offers of
 * it that stand in Offers.
 */
export async function takenListStep(book: Book, lists: LongLists, taken: TakenList): Promise<Step> {
  const { vendor } = taken.kept;
  const { known } = await lists.find(vendor, [], IN_PLAY, standing(book, vendor));
  const list = partOf(book, taken.kept, known);
  return {
    ...bringInOffersStep(book, { ...list, currency: taken.currency, columns: taken.understood }),
    name: `Take in the list of ${vendor}`,
  };
}

/**
 * Finds offers for every part: what comes into play of the long lists is written to Offers, then the best offer of each part.
 *
 * Each long list is asked in its own thread. All of it is one step.
 */
export async function findOffersStep(host: Host, book: Book, wants: Wants, lists: LongLists): Promise<Step> {
  const wanted = wants.lines.map(({ demands, pieces }): Wanted => ({ ratings: demands[0]!.ratings, pieces }));
  if (wanted.length === 0) return nothingToDo("No part is to be bought");
  const kept = (await lists.kept()).filter(({ vendor }) => isKnown(book, vendor));
  const found = await Promise.all(
    kept.map(async (card) => {
      const { inPlay, known } = await lists.find(card.vendor, wanted, IN_PLAY, standing(book, card.vendor));
      return partOf(book, card, [...new Map([...known, ...inPlay].map((offer) => [offer.row, offer])).values()]);
    }),
  );
  const name = `Find offers for ${wants.demands.length} parts`;
  const listed = found.filter(({ offers }) => offers.length > 0);
  return together(host, name, [
    ...listed.map((list) => (ahead: Book) => bringInOffersStep(ahead, list)),
    (ahead) => matchStep(ahead, wantsOf(ahead)),
  ]);
}

const isKnown = (book: Book, vendor: string) => valuesOf(book.vendors).some((row) => row.vendor === vendor);

/** How the columns of a vendor's lists were understood before; null where none came in yet. */
export const columnsOf = (book: Book, vendor: string): string | null =>
  valuesOf(book.vendors).find((row) => row.vendor === vendor)?.columns ?? null;

const plain = (name: string) => name.toLowerCase().replace(/[^\p{L}]/gu, "");

/**
 * Whose list a file may be: a vendor that its name speaks of, else the only one whose lists have these columns, else its name
 * without date and number.
 */
export function likelyVendor(book: Book, file: string, columns: readonly string[]): string {
  const stem = file.replace(/\.[^.]+$/, "");
  const vendors = valuesOf(book.vendors).flatMap(({ vendor, columns: cell }) => (vendor ? [{ vendor, cell }] : []));
  const named = vendors.find(({ vendor }) => plain(vendor) !== "" && plain(stem).includes(plain(vendor)));
  const alike = vendors.filter(({ cell }) => hasAll(columns, namedColumns(cell)));
  const bare = stem.replace(/[\s_-]*\d[\d\s._-]*$/, "").replace(/[_-]+/g, " ");
  return named?.vendor ?? (alike.length === 1 ? alike[0]!.vendor : bare.trim() || stem);
}

const hasAll = (columns: readonly string[], wanted: readonly string[]) =>
  wanted.length > 1 && wanted.every((name) => columns.includes(name));
