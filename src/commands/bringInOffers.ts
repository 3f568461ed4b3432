import {
  emptyRow,
  OFFERS_SHEET,
  type Offer,
  type OffersRow,
  rowOfOffer,
  STATUS_CHANGE,
  VENDORS_SHEET,
  type VendorsRow,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import { type Book, valuesOf } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { addRows, emptyCells, patchRows, writtenRow } from "./writeSheet.js";

/** A vendor's list as it was read: its offers, the rows that yield none with the reason, and how its columns were understood. */
export type VendorList = {
  readonly vendor: string;
  readonly listDate: string;
  readonly currency: string | null;
  readonly offers: readonly Offer[];
  readonly refused: readonly { readonly row: number; readonly text: string; readonly reason: string }[];
  readonly columns: string;
  /** Where only the offers in play and those written before are given: how many the whole list has, and refuses. */
  readonly whole?: { readonly offers: number; readonly refused: number };
  readonly terms?: Partial<Pick<VendorsRow, "shipping" | "freeFrom" | "minimumOrder" | "smallOrderFee">>;
};

/**
 * Writes a vendor's list to Offers: known stock numbers are updated and say what changed, new ones are added, those no
 * longer listed are marked as gone. Rows that could not be read stand there too, with the reason.
 */
export function bringInOffersStep(book: Book, list: VendorList): Step {
  if (list.offers.length === 0 && list.refused.length === 0 && !list.whole) return nothingToDo("That list has no rows");
  const fresh = list.offers.map((offer) => ({ ...rowOfOffer(offer), vendor: list.vendor }));
  const old = (book.offers?.rows ?? []).filter(({ values }) => values.vendor === list.vendor);
  const { patches, added, counts } = compared(
    old,
    [...fresh, ...list.refused.map((each) => refusedRow(list, each))],
    list.whole === undefined && old.length > 0,
  );
  const changes: readonly Change[] = [
    ...(book.offers ? patchRows(book.offers, patches) : []),
    ...(added.length > 0 || !book.offers ? addRows(book.offers, OFFERS_SHEET, added) : []),
    ...vendorChanges(book, list),
  ];
  return {
    name: `Bring in ${counted(list.offers.length, "offer")} of ${list.vendor}`,
    changes,
    overwrites: [],
    notes: old.length > 0 && !list.whole ? [counts] : [],
  };
}

const refusedRow = (list: VendorList, refused: VendorList["refused"][number]): OffersRow => ({
  ...emptyRow(OFFERS_SHEET),
  vendor: list.vendor,
  description: refused.text,
  row: refused.row,
  unclear: refused.reason,
});

/** What a row is known by within its vendor's list. */
const nameOf = (row: OffersRow) => row.stockNumber ?? `row ${row.row}: ${row.description}`;

type OffersView = ViewRow<typeof OFFERS_SHEET>;

/** @param tellsNew Whether rows that were not there before are new in the list, not only in play. */
function compared(old: readonly OffersView[], fresh: readonly OffersRow[], tellsNew: boolean) {
  const byName = new Map(old.map((row) => [nameOf(row.values), row]));
  const seen = new Set(fresh.map(nameOf));
  const known = fresh.filter((row) => byName.has(nameOf(row)));
  const patches = known.map((row) => {
    const there = byName.get(nameOf(row))!;
    return {
      at: there.at,
      cells: { ...emptyCells(OFFERS_SHEET), ...writtenRow(OFFERS_SHEET, row), change: changeOf(there.values, row) },
    };
  });
  const gone = old.filter(({ values }) => !seen.has(nameOf(values)));
  const goneCells = { change: "gone from the list", status: "out-of-stock" as const };
  const added = fresh
    .filter((row) => !byName.has(nameOf(row)))
    .map((row) => ({ ...writtenRow(OFFERS_SHEET, row), ...(tellsNew ? { change: "new" } : {}) }));
  const changed = patches.filter(({ cells }) => cells.change !== "").length;
  const counts = `${added.length} new, ${changed} changed, ${gone.length} gone.`;
  return { patches: [...patches, ...gone.map(({ at }) => ({ at, cells: goneCells }))], added, counts };
}

/** What is different about an offer since the last list, in words; "" where nothing that matters is. */
function changeOf(old: OffersRow, fresh: OffersRow): string {
  const price = (row: OffersRow) => Number.parseFloat(row.prices ?? "") / (row.pack ?? 1);
  const words = [
    fresh.status !== null && fresh.status !== old.status && STATUS_CHANGE[fresh.status],
    price(fresh) > price(old) && `dearer: was ${old.prices}`,
    price(fresh) < price(old) && `cheaper: was ${old.prices}`,
  ];
  return words.filter(Boolean).join("; ");
}

function vendorChanges(book: Book, list: VendorList): readonly Change[] {
  const row = {
    vendor: list.vendor,
    listDate: list.listDate,
    currency: list.currency,
    offers: list.whole?.offers ?? list.offers.length,
    refused: list.whole?.refused ?? list.refused.length,
    columns: list.columns,
  };
  const there = book.vendors?.rows.find(({ values }) => values.vendor === list.vendor);
  if (book.vendors && there) return patchRows(book.vendors, [{ at: there.at, cells: row }]);
  return addRows(book.vendors, VENDORS_SHEET, [{ shipping: 0, ...row, ...list.terms }]);
}

/** The offers in play that can be read: those of Offers and of On hand; rows that yield none are passed over. */
export const offerRows = (book: Book) =>
  [...valuesOf(book.offers), ...valuesOf(book.onHand)].filter((row) => row.kind !== null);
