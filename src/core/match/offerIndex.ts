import type { Offer } from "../offer.js";
import type { Kind } from "../part.js";

/**
 * Offers that differ only in value, price, size, supply and text: what is checked of one of them holds for all.
 *
 * Its offers are the places `from` up to but not including `to` of the index.
 */
export type Shelf = { readonly sample: Offer; readonly from: number; readonly to: number };

/**
 * A list of offers laid out for quick matching, however long: 28 bytes an offer beside the offers themselves.
 *
 * Places are ordered by shelf, then value (`values`, -1 where none is stated), then price. `order` leads from a place
 * to the offer, `runFrom` and `runTo` to the places of the same value on the same shelf, `cheapest` is the least that
 * one piece costs at any quantity.
 */
export type OfferIndex = {
  readonly offers: readonly Offer[];
  readonly shelves: ReadonlyMap<Kind, readonly Shelf[]>;
  readonly order: Int32Array;
  readonly values: Float64Array;
  readonly cheapest: Float64Array;
  readonly runFrom: Int32Array;
  readonly runTo: Int32Array;
};

const NO_VALUE = -1;

/**
 * The index of a list of offers; `offersInPlay` asks it.
 *
 * @example indexOffers(offers).shelves.get("resistor")?.length
 */
export function indexOffers(offers: readonly Offer[]): OfferIndex {
  const { shelfOf, samples } = sortedToShelves(offers);
  const starts = startsOf(shelfOf, samples.length);
  const order = new Int32Array(offers.length);
  const next = starts.slice();
  shelfOf.forEach((shelf, i) => {
    order[next[shelf]!++] = i;
  });
  const value = Float64Array.from(offers, (offer) => offer.value ?? NO_VALUE);
  const price = Float64Array.from(offers, cheapestPiece);
  for (let shelf = 0; shelf < samples.length; shelf++) {
    const places = order.subarray(starts[shelf], starts[shelf + 1]);
    places.sort((a, b) => value[a]! - value[b]! || ascending(price[a]!, price[b]!) || a - b);
  }
  const values = Float64Array.from(order, (i) => value[i]!);
  const shelves = new Map<Kind, Shelf[]>();
  samples.forEach((sample, i) => {
    const shelf = { sample, from: starts[i]!, to: starts[i + 1]! };
    shelves.set(sample.kind, [...(shelves.get(sample.kind) ?? []), shelf]);
  });
  return {
    offers,
    shelves,
    order,
    values,
    cheapest: Float64Array.from(order, (i) => price[i]!),
    ...runs(values, starts),
  };
}

const ascending = (a: number, b: number) => (a === b ? 0 : a < b ? -1 : 1);

/** The shelf of each offer, by what the checks look at beside value, price, size, supply and text. */
function sortedToShelves(offers: readonly Offer[]): { shelfOf: Int32Array; samples: Offer[] } {
  const known = new Map<string, number>();
  const samples: Offer[] = [];
  const shelfOf = new Int32Array(offers.length);
  offers.forEach((offer, i) => {
    const key = shelfKey(offer);
    let shelf = known.get(key);
    if (shelf === undefined) {
      shelf = samples.push(offer) - 1;
      known.set(key, shelf);
    }
    shelfOf[i] = shelf;
  });
  return { shelfOf, samples };
}

function shelfKey(offer: Offer): string {
  const { kind, technology, watts, volts, voltsKind, tolerance, safetyClass, temperatureCoefficient, taper } = offer;
  const words = technology.length > 1 ? [...technology].sort().join(" ") : technology[0];
  return `${kind}|${words}|${watts}|${volts}|${voltsKind}|${tolerance?.minus}|${tolerance?.plus}|${safetyClass}|${temperatureCoefficient}|${taper}|${offer.newOldStock}`;
}

/** Where each shelf starts, and behind the last one where it ends. */
function startsOf(shelfOf: Int32Array, count: number): Int32Array {
  const starts = new Int32Array(count + 1);
  for (const shelf of shelfOf) starts[shelf + 1]!++;
  for (let i = 0; i < count; i++) starts[i + 1]! += starts[i]!;
  return starts;
}

function cheapestPiece({ breaks, pack }: Offer): number {
  return breaks.reduce((least, [, price]) => Math.min(least, price / pack), Number.POSITIVE_INFINITY);
}

/** For each place the first place of its value on its shelf, and the one behind the last. */
function runs(values: Float64Array, starts: Int32Array): { runFrom: Int32Array; runTo: Int32Array } {
  const runFrom = new Int32Array(values.length);
  const runTo = new Int32Array(values.length);
  for (let shelf = 0; shelf + 1 < starts.length; shelf++) {
    for (let from = starts[shelf]!; from < starts[shelf + 1]!; ) {
      let to = from + 1;
      while (to < starts[shelf + 1]! && values[to] === values[from]) to++;
      runFrom.fill(from, from, to);
      runTo.fill(to, from, to);
      from = to;
    }
  }
  return { runFrom, runTo };
}
