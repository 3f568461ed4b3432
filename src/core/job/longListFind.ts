import { offersInPlay } from "../match/offersInPlay.js";
import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { type LongList, nameOf, offerOfList } from "./longList.js";
import { placesOfNumbers } from "./numberTable.js";

/** What a line of the basket asks of a long list. */
export type Wanted = { readonly ratings: Ratings; readonly pieces: number };

/** Finds in a long list: what comes into play for some wants, and offers by their stock numbers. */
export type ListFinder = {
  /** The best offers for each want; where nothing fits, the ones that one eased limit would let in, so that it can be said. */
  readonly inPlay: (wants: readonly Wanted[], most: number) => readonly Offer[];
  readonly byName: (names: readonly Pick<Offer, "stockNumber" | "description">[]) => readonly Offer[];
};

const MOST_KNOWN = 20_000;
const NEAR_MISSES = 2;

/** A finder for a long list; it remembers offers it has read. */
export function finderOf(list: LongList): ListFinder {
  const known = new Map<number, Offer>();
  const offerAt = (row: number): Offer => {
    const there = known.get(row);
    if (there) return there;
    if (known.size >= MOST_KNOWN) known.clear();
    const offer = offerOfList(list, row);
    known.set(row, offer);
    return offer;
  };
  const find = offersInPlay(list.index, offerAt);
  const forWant = ({ ratings, pieces }: Wanted, most: number) => {
    const fitting = find(ratings, { pieces, most });
    if (fitting.length > 0) return fitting;
    return eased(ratings).flatMap((easier) => find(easier, { pieces, most: NEAR_MISSES }));
  };
  const placeOf = placesOfNumbers(list.marks.names);
  return {
    inPlay: (wants, most) => [...new Set(wants.flatMap((want) => forWant(want, most)).map(({ offer }) => offer))],
    byName: (names) =>
      names.flatMap((name) => {
        const row = placeOf(nameOf(name));
        return row < 0 ? [] : [offerAt(row)];
      }),
  };
}

/** How far off a value may be to be told as the nearest there is, as a ratio. */
const NEAR = 0.3;

/** The ratings with one limit left out at a time. A safety class, and the volts of an a.c. place, are never eased. */
function eased(ratings: Ratings): readonly Ratings[] {
  const { wanted, voltsKind } = ratings;
  const wide = wanted === null ? null : { min: wanted * (1 - NEAR), max: wanted * (1 + NEAR) };
  return [
    ...(voltsKind === "ac" ? [] : [{ ...ratings, leastVolts: null, wantVolts: null }]),
    { ...ratings, leastWatts: null, wantWatts: null, mostWatts: null },
    { ...ratings, tolerance: null },
    { ...ratings, technologies: [] },
    { ...ratings, temperatureCoefficient: null },
    { ...ratings, room: null },
    ...(wide ? [{ ...ratings, gate: "nominal" as const, window: wide }] : []),
  ];
}
