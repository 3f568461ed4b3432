import { indexBytes, type OfferIndex, offerIndexer } from "../match/offerIndex.js";
import { type Offer, STATUSES } from "../offer.js";
import type { Kind } from "../part.js";
import { isRow, type ListSense, type RefusedRow, readRow } from "../read/offers/readOffers.js";
import { bytesOfLines, countOfLines, lineAt, type PackedLines } from "../read/packedLines.js";
import { numberOf } from "./numberTable.js";

/** What tells an offer again in a later list, and what may have changed by then; one figure an offer. */
export type OfferMarks = {
  readonly names: Float64Array;
  readonly prices: Float64Array;
  readonly statuses: Uint8Array;
};

/**
 * A vendor's list that is too long for a sheet: its lines, an index of its offers, and what was refused.
 *
 * Offers are not kept: `offerOfList` reads the one that is wanted from its line again. `places` leads from an offer to its
 * line, `headings` are the kinds that headings name and the line from which on they hold; `refusals` are lines with the
 * number of their reason. All of it is plain data, to be kept as it is.
 */
export type LongList = {
  readonly sense: ListSense;
  readonly lines: PackedLines;
  readonly index: OfferIndex;
  readonly places: Int32Array;
  readonly headings: readonly (readonly [from: number, kind: Kind | null])[];
  readonly marks: OfferMarks;
  readonly reasons: readonly string[];
  readonly refusals: { readonly lines: Int32Array; readonly reasons: Int32Array };
};

const TOLD_EVERY = 1000;

/**
 * Reads a long list row by row: every row ends as an offer or as a refused row.
 *
 * Yields the share that is done, 0..1, so that whoever drives it can tell, and can stop.
 */
export function* readLongList(lines: PackedLines, sense: ListSense): Generator<number, LongList> {
  const count = countOfLines(lines);
  const indexer = offerIndexer();
  const offers = { place: [] as number[], name: [] as number[], price: [] as number[], status: [] as number[] };
  const refused = { line: [] as number[], reason: [] as number[] };
  const reasons = new Map<string, number>();
  const headings: [number, Kind | null][] = [];
  let headingKind: Kind | null = null;
  for (let at = 0; at < count; at++) {
    if (at % TOLD_EVERY === 0) yield at / count;
    const line = lineAt(lines, at);
    if (!isRow(line, sense.mapping)) continue;
    const read = readRow(line, sense, headingKind);
    if (read.headingKind !== headingKind) {
      headingKind = read.headingKind;
      headings.push([at, headingKind]);
    }
    if (read.offer) {
      indexer.add(read.offer);
      offers.place.push(at);
      offers.name.push(nameOf(read.offer));
      offers.price.push(pieceAtFirst(read.offer));
      offers.status.push(STATUSES.indexOf(read.offer.status));
    } else {
      const reason = reasons.get(read.reason) ?? reasons.size;
      reasons.set(read.reason, reason);
      refused.line.push(at);
      refused.reason.push(reason);
    }
  }
  return {
    ...{ sense, lines, headings, index: indexer.finish(), places: Int32Array.from(offers.place) },
    marks: {
      names: Float64Array.from(offers.name),
      prices: Float64Array.from(offers.price),
      statuses: Uint8Array.from(offers.status),
    },
    reasons: [...reasons.keys()],
    refusals: { lines: Int32Array.from(refused.line), reasons: Int32Array.from(refused.reason) },
  };
}

/** What an offer is known by within its vendor's list, as a number. */
export const nameOf = ({ stockNumber, description }: Pick<Offer, "stockNumber" | "description">): number =>
  numberOf(stockNumber ?? description);

const pieceAtFirst = ({ breaks, pack }: Offer): number => (breaks[0] ? breaks[0][1] / pack : Number.NaN);

/** An offer of a long list, counted from 0, read from its line. */
export function offerOfList({ lines, places, headings, sense }: LongList, row: number): Offer {
  const at = places[row]!;
  const kind = headings.filter(([from]) => from < at).at(-1)?.[1] ?? null;
  const { offer } = readRow(lineAt(lines, at), sense, kind);
  if (!offer) throw new Error(`Line ${at} was an offer and is none now`);
  return offer;
}

/** Refused rows of a long list, counted from 0. */
export function refusedOfList({ lines, reasons, refusals }: LongList, from: number, to: number): RefusedRow[] {
  return Array.from(refusals.lines.subarray(from, to), (at, i) => {
    const { number, text } = lineAt(lines, at);
    return { row: number, text, reason: reasons[refusals.reasons[from + i]!]! };
  });
}

/** How many rows were refused for which reason, the most frequent first. */
export function reasonsOfList({ reasons, refusals }: LongList): readonly (readonly [reason: string, rows: number])[] {
  const counts = reasons.map(() => 0);
  for (const reason of refusals.reasons) counts[reason]!++;
  return reasons.map((reason, i) => [reason, counts[i]!] as const).sort((a, b) => b[1] - a[1]);
}

/** The room a long list takes, in bytes. */
export function bytesOfList({ lines, index, places, marks, refusals }: LongList): number {
  const arrays = [places, marks.names, marks.prices, marks.statuses, refusals.lines, refusals.reasons];
  return bytesOfLines(lines) + indexBytes(index) + arrays.reduce((sum, array) => sum + array.byteLength, 0);
}
