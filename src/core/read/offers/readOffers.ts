import type { Offer } from "../../offer.js";
import type { Kind } from "../../part.js";
import type { SourceLine } from "../sourceLine.js";
import { fold, saysNothing } from "./fold.js";
import { cellsOf, guessMapping } from "./guessMapping.js";
import { namedKind } from "./kindOf.js";
import type { OfferMapping } from "./offerColumn.js";
import { type ListContext, readOffer } from "./readOffer.js";
import { isHeading } from "./refusals.js";
import { type RowTexts, rowTexts } from "./rowTexts.js";

/** A row that makes no offer: where it stands, what it says, and why. */
export type RefusedRow = { readonly row: number; readonly text: string; readonly reason: string };

/** A vendor's list as read: rows in are offers, refused rows and the lines down to the heads. */
export type OffersRead = {
  readonly offers: readonly Offer[];
  readonly refused: readonly RefusedRow[];
  readonly heads: readonly number[];
  readonly mapping: OfferMapping;
};

const M_MEANS_THOUSAND = /\bm\b[^.;]{0,40}\b(thousand|tausend|mille|duizend|1000|kilo)/;

const HEADING_LETTERS: Readonly<Record<string, Kind>> = { R: "resistor", C: "capacitor", L: "inductor" };

/** Whose list it is, and how it is laid out where the user has said so (else it is guessed). */
export type ReadOffersOptions = { readonly vendor?: string; readonly mapping?: OfferMapping };

/**
 * A vendor's list, or one's own drawers, as offers.
 *
 * Every row ends as an offer or as a refused row with its reason; only lines down to the heads and lines without any
 * character are no rows. Nothing is carried from one row to the next but the kind that a heading names.
 *
 * @param lines Rows with cells, as a source gives them.
 * @example readOffers(lines, { vendor: "Hollin & Daughters" }).offers[0]?.value
 */
export function readOffers(lines: readonly SourceLine[], options: ReadOffersOptions = {}): OffersRead {
  const mapping = options.mapping ?? guessMapping(lines);
  const sense = senseOf(lines, mapping, options.vendor ?? "");
  const offers: Offer[] = [];
  const refused: RefusedRow[] = [];
  const ids = new Set<string>();
  let headingKind: Kind | null = null;
  for (const line of lines) {
    if (!isRow(line, mapping)) continue;
    const read = readRow(line, sense, headingKind);
    headingKind = read.headingKind;
    if (read.offer) offers.push(withOwnId(read.offer, ids));
    else refused.push({ row: line.number, text: line.text, reason: read.reason });
  }
  const heads = lines.filter((line) => isHead(line, mapping)).map((line) => line.number);
  return { offers, refused, heads, mapping };
}

/** What a list says as a whole: all that its rows are read by, beside the kind that a heading above them names. */
export type ListSense = Omit<ListContext, "hints"> & { readonly capitalM: "thousand" | "million" | null };

/** What a list says as a whole, its columns understood as a mapping says. */
export function senseOf(lines: Iterable<SourceLine>, mapping: OfferMapping, vendor: string): ListSense {
  const isPriced = mapping.columns.some((column) => column.field === "price");
  return { vendor, mapping, isPriced, capitalM: capitalMOf(lines) };
}

const isHead = ({ number }: SourceLine, { headLine }: OfferMapping) => headLine !== null && number <= headLine;

/** Whether a line is a row of the list: neither one down to the heads nor one without any character. */
export const isRow = (line: SourceLine, mapping: OfferMapping): boolean => line.text !== "" && !isHead(line, mapping);

/** What a row makes: an offer, or none and the reason; and the kind named by the last heading, for the rows below. */
export type RowRead = { readonly headingKind: Kind | null } & (
  | { readonly offer: Offer; readonly reason?: undefined }
  | { readonly offer?: undefined; readonly reason: string }
);

/** One row of a list, by itself. @param headingKind The kind named by the last heading above it. */
export function readRow(line: SourceLine, sense: ListSense, headingKind: Kind | null): RowRead {
  const { mapping, capitalM } = sense;
  const cells = cellsOf(line);
  const texts = rowTexts(cells, mapping);
  const filled = cells.filter((cell) => !saysNothing(cell));
  if (filled.length === 0) return { headingKind, reason: "an empty row" };
  if (isHeadingRow(texts, filled, mapping)) return { headingKind: headedKind(filled), reason: "a heading or note" };
  const hints = { mark: mapping.mark, capitalM, headingKind };
  return { headingKind, ...readOffer(texts, line.number, { ...sense, hints }) };
}

/** A number that a list prints twice names its later row too. */
function withOwnId(offer: Offer, ids: Set<string>): Offer {
  const id = ids.has(offer.id) ? `${offer.id} row ${offer.row}` : offer.id;
  ids.add(id);
  return id === offer.id ? offer : { ...offer, id };
}

/** The kind that a heading names, in words or by the letter of its designators. */
function headedKind(filled: readonly string[]): Kind | null {
  const letter = HEADING_LETTERS[filled.at(-1)!.trim().toUpperCase()];
  return letter ?? namedKind(filled.join(" "));
}

function isHeadingRow(texts: RowTexts, filled: readonly string[], { columns }: OfferMapping): boolean {
  const hasPrice = texts.of("price").some(({ text }) => /\d/.test(text));
  const hasNumber = texts.first("stock number") !== null;
  const isPlainList = columns.filter((column) => column.field !== "nothing").length <= 1;
  if (HEADING_LETTERS[filled.at(-1)!.trim().toUpperCase()] && filled.length <= 2) return true;
  if (isHeading(filled, hasNumber, hasPrice, isPlainList)) return true;
  const sells =
    columns.some((column) => column.field === "price") && columns.some((column) => column.field === "stock number");
  return sells && !hasNumber && texts.of("price").length === 0;
}

/**
 * What a bare M means in this list: what a note in it says, else a million where thousands are written K, else open.
 *
 * Open means that each value with a bare M is asked about.
 */
function capitalMOf(lines: Iterable<SourceLine>): "thousand" | "million" | null {
  let [hasK, hasMeg, hasM] = [false, false, false];
  for (const { text } of lines) {
    if (/\bm\b/i.test(text) && M_MEANS_THOUSAND.test(fold(text))) return "thousand";
    hasK ||= /\d\s?[kK](?:\d|\b|ohm|Ω)/.test(text);
    hasMeg ||= /\d\s?(?:meg|Meg|MEG)/.test(text);
    hasM ||= /\d\s?M\b/.test(text);
  }
  return hasK || !hasMeg || !hasM ? "million" : null;
}
