import type { Offer } from "../offer.js";
import { soldOut } from "./checkBuild.js";

/** Offers of one kind and of the same technology words: the places `from` up to but not including `to` of the index. */
export type Bay = { readonly from: number; readonly to: number };

/**
 * A list of offers laid out for quick matching, however long: 24 bytes an offer.
 *
 * Places are ordered by bay, then value (`values`, -1 where none is stated), then price (`prices`: the least that one
 * piece costs at any quantity). `rows` leads from a place to the offer, counted from 0 in its list, and `shelves` to
 * the one of `samples` that stands for it: offers of one shelf differ in value, price, size, supply and text only.
 * Offers that can't be had are in no place.
 */
export type OfferIndex = {
  readonly samples: readonly Offer[];
  readonly bays: readonly Bay[];
  /** The bay of each shelf. */
  readonly bayOf: readonly number[];
  readonly rows: Int32Array;
  readonly shelves: Int32Array;
  readonly values: Float64Array;
  readonly prices: Float64Array;
};

const NO_VALUE = -1;

/** Takes offers in one by one, in the order of their list, and lays them out at the end; none of them is kept but the samples. */
export type OfferIndexer = { readonly add: (offer: Offer) => void; readonly finish: () => OfferIndex };

/**
 * The index of a list of offers; `offersInPlay` asks it.
 *
 * @example indexOffers(offers).bays.length
 */
export function indexOffers(offers: readonly Offer[]): OfferIndex {
  const indexer = offerIndexer();
  for (const offer of offers) indexer.add(offer);
  return indexer.finish();
}

/** An index built as a list is read, so that a long list needs no room for all its offers at once. */
export function offerIndexer(): OfferIndexer {
  const samples: Offer[] = [];
  const shelfOf = new Map<string, number>();
  const bayOfShelf: number[] = [];
  const bays = new Map<string, number>();
  const columns = { row: [] as number[], shelf: [] as number[], value: [] as number[], price: [] as number[] };
  let count = 0;
  const numbered = (known: Map<string, number>, key: string, onNew: () => void) => {
    const there = known.get(key);
    if (there !== undefined) return there;
    onNew();
    known.set(key, known.size);
    return known.size - 1;
  };
  const add = (offer: Offer) => {
    const row = count++;
    if (soldOut(offer) !== null) return;
    const bay = bayKey(offer);
    const shelf = numbered(shelfOf, `${bay}${shelfKey(offer)}`, () => {
      samples.push(offer);
      bayOfShelf.push(numbered(bays, bay, () => {}));
    });
    columns.row.push(row);
    columns.shelf.push(shelf);
    columns.value.push(offer.value ?? NO_VALUE);
    columns.price.push(cheapestPiece(offer));
  };
  return { add, finish: () => laidOut(samples, bayOfShelf, columns) };
}

type Columns = Readonly<Record<"row" | "shelf" | "value" | "price", readonly number[]>>;

function laidOut(samples: readonly Offer[], bayOfShelf: readonly number[], columns: Columns): OfferIndex {
  const { row, shelf, value, price } = columns;
  const starts = startsOf(shelf, bayOfShelf);
  const order = new Int32Array(shelf.length);
  const next = starts.slice();
  shelf.forEach((each, i) => {
    order[next[bayOfShelf[each]!]!++] = i;
  });
  for (let bay = 0; bay + 1 < starts.length; bay++) {
    const places = order.subarray(starts[bay], starts[bay + 1]);
    places.sort((a, b) => value[a]! - value[b]! || ascending(price[a]!, price[b]!) || a - b);
  }
  return {
    samples,
    bays: Array.from(starts.subarray(1), (to, bay) => ({ from: starts[bay]!, to })),
    bayOf: bayOfShelf,
    rows: Int32Array.from(order, (i) => row[i]!),
    shelves: Int32Array.from(order, (i) => shelf[i]!),
    values: Float64Array.from(order, (i) => value[i]!),
    prices: Float64Array.from(order, (i) => price[i]!),
  };
}

const ascending = (a: number, b: number) => (a === b ? 0 : a < b ? -1 : 1);

/** Where each bay starts, and behind the last one where it ends. */
function startsOf(shelf: readonly number[], bayOfShelf: readonly number[]): Int32Array {
  const bays = bayOfShelf.reduce((most, bay) => Math.max(most, bay + 1), 0);
  const starts = new Int32Array(bays + 1);
  for (const each of shelf) starts[bayOfShelf[each]! + 1]!++;
  for (let i = 0; i < bays; i++) starts[i + 1]! += starts[i]!;
  return starts;
}

function bayKey({ kind, technology }: Offer): string {
  const words = technology.length > 1 ? [...technology].sort().join(" ") : technology[0];
  return `${kind}|${words}|`;
}

function shelfKey(offer: Offer): string {
  const { watts, volts, voltsKind, tolerance, safetyClass, temperatureCoefficient, taper, newOldStock } = offer;
  return `${watts}|${volts}|${voltsKind}|${tolerance?.minus}|${tolerance?.plus}|${safetyClass}|${temperatureCoefficient}|${taper}|${newOldStock}`;
}

function cheapestPiece({ breaks, pack }: Offer): number {
  return breaks.reduce((least, [, price]) => Math.min(least, price / pack), Number.POSITIVE_INFINITY);
}

/** The room an index takes beside its samples, in bytes. */
export const indexBytes = ({ rows, shelves, values, prices }: OfferIndex): number =>
  rows.byteLength + shelves.byteLength + values.byteLength + prices.byteLength;
