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
  const isHead = (line: SourceLine) => mapping.headLine !== null && line.number <= mapping.headLine;
  const rows = lines.filter(
    (line) => (!isHead(line) && line.text.trim() !== "") || (!isHead(line) && line.text !== ""),
  );
  const vendor = options.vendor ?? "";
  const capitalM = capitalMOf(lines);
  const isPriced = mapping.columns.some((column) => column.field === "price");
  const offers: Offer[] = [];
  const refused: RefusedRow[] = [];
  const ids = new Set<string>();
  let headingKind: Kind | null = null;
  for (const line of rows) {
    const cells = cellsOf(line);
    const texts = rowTexts(cells, mapping);
    const refuse = (reason: string) => refused.push({ row: line.number, text: line.text, reason });
    const filled = cells.filter((cell) => !saysNothing(cell));
    if (filled.length === 0) {
      refuse("an empty row");
    } else if (isHeadingRow(texts, filled, mapping)) {
      headingKind = headedKind(filled);
      refuse("a heading or note");
    } else {
      const context: ListContext = { vendor, mapping, isPriced, hints: { mark: mapping.mark, capitalM, headingKind } };
      const result = readOffer(texts, line.number, context);
      if ("offer" in result) offers.push(withOwnId(result.offer, ids));
      else refuse(result.reason);
    }
  }
  return { offers, refused, heads: lines.filter(isHead).map((line) => line.number), mapping };
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
function capitalMOf(lines: readonly SourceLine[]): "thousand" | "million" | null {
  const texts = lines.map((line) => line.text);
  const note = texts
    .map(fold)
    .find((text) => /\bm\b[^.;]{0,40}\b(thousand|tausend|mille|duizend|1000|kilo)/.test(text));
  if (note) return "thousand";
  const uses = (pattern: RegExp) => texts.some((text) => pattern.test(text));
  const hasK = uses(/\d\s?[kK](?:\d|\b|ohm|Ω)/);
  return hasK || !uses(/\d\s?(?:meg|Meg|MEG)/) || !uses(/\d\s?M\b/) ? "million" : null;
}
