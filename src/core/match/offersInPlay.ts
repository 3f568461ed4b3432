import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";
import { nominalSpan } from "./checkValue.js";
import { fits, notesOn, sharedNotes } from "./judge.js";
import { type Match, matchOf } from "./matchOffers.js";
import type { Note } from "./note.js";
import type { Bay, OfferIndex } from "./offerIndex.js";
import { compareRanks, count, distanceOf, type Rank } from "./rank.js";

/** How many pieces are wanted (1), and how many of the best offers are asked for (all of them). */
export type InPlayOptions = { readonly pieces?: number; readonly most?: number };

/** What offers have against them at least: rank figures that value and price do not move. */
type Standing = { readonly technology: number; readonly tight: number; readonly care: number };

/** One shelf: how much is over in it, and the notes that its offers share, where they do. */
type Shelved = Standing & { readonly over: number; readonly shared: readonly Note[] | undefined };

/** Shelves of equal standing, with their bays; by number of the shelf in the index. */
type Aisle = Standing & { readonly bays: ReadonlySet<Bay>; readonly shelved: readonly (Shelved | undefined)[] };

/**
 * A function that gives the best offers of an index for any ratings: the very matches that `matchOffers` puts first.
 *
 * Whole shelves are ruled out by their sample. The rest is looked at standing by standing, the best first, from the
 * value wanted outwards, and judged only where shelf, value and price let an offer be among the best. The matcher's own
 * checks decide on each offer.
 *
 * @param offerAt The offer of a row, counted from 0 in the list that was indexed.
 * @example const find = offersInPlay(indexOffers(offers), (row) => offers[row]!); find(ratings, { most: 5 })
 */
export function offersInPlay(
  index: OfferIndex,
  offerAt: (row: number) => Offer,
): (ratings: Ratings, options?: InPlayOptions) => Match[] {
  const known = new Map<string, readonly Aisle[]>();
  return (ratings, { pieces = 1, most = Number.POSITIVE_INFINITY } = {}) => {
    const key = withoutValue(ratings);
    const aisles = known.get(key) ?? aislesOf(index, ratings);
    if (!known.has(key)) known.set(key, aisles);
    const best = bestList(most);
    const judge: Judge = (row, shared) => {
      const offer = offerAt(row);
      const notes = notesOn(ratings, offer, pieces, shared);
      if (fits(notes)) best.take(matchOf(ratings, offer, pieces, notes), row);
    };
    for (const aisle of aisles) {
      if (!best.mayTake(aisle, 0, 0, 0)) break;
      for (const bay of aisle.bays) walk(index, bay, aisle, { ratings, best, judge });
    }
    return best.matches();
  };
}

/** Ratings that differ in value only open the same shelves. */
function withoutValue(ratings: Ratings): string {
  const { kind, leastWatts, wantWatts, mostWatts, leastVolts, wantVolts, voltsKind, tolerance } = ratings;
  const { technologies, safety, temperatureCoefficient, taper } = ratings;
  const figures = [leastWatts, wantWatts, mostWatts, leastVolts, wantVolts, tolerance?.minus, tolerance?.plus];
  return [kind, ...figures, voltsKind, safety, temperatureCoefficient, taper, ...technologies].join("|");
}

/** The shelves that may serve, by standing, the best first. */
function aislesOf({ samples, bayOf, bays }: OfferIndex, ratings: Ratings): readonly Aisle[] {
  const aisles = new Map<string, Standing & { readonly bays: Set<Bay>; readonly shelved: (Shelved | undefined)[] }>();
  samples.forEach((sample, shelf) => {
    const standing = sample.kind === ratings.kind ? standingOf(sample, ratings) : null;
    if (!standing) return;
    const { technology, tight, care } = standing;
    const key = `${technology}|${tight}|${care}`;
    const none = () => new Array<Shelved | undefined>(samples.length).fill(undefined);
    const aisle = aisles.get(key) ?? { technology, tight, care, bays: new Set(), shelved: none() };
    aisles.set(key, aisle);
    aisle.bays.add(bays[bayOf[shelf]!]!);
    aisle.shelved[shelf] = standing;
  });
  return [...aisles.values()].sort((a, b) => a.technology - b.technology || a.tight - b.tight || a.care - b.care);
}

/** What a shelf has against it at least. Unstated volts are out or tight, by what the body of each offer usually bears. */
function standingOf(sample: Offer, ratings: Ratings): Shelved | null {
  const technology = technologyAtBest(sample, ratings);
  if (technology === null) return null;
  const isVoltsOpen = sample.volts === null && ratings.leastVolts !== null;
  const notes = sharedNotes(isVoltsOpen ? { ...ratings, leastVolts: null } : ratings, sample);
  if (!fits(notes)) return null;
  const tight = count(notes, "tight") + (isVoltsOpen ? 1 : 0);
  const shared = isVoltsOpen ? undefined : notes;
  return { technology, tight, care: sample.newOldStock ? 1 : 0, over: count(notes, "over"), shared };
}

/** The first technology whose words are carried; what else it asks may differ from offer to offer. */
function technologyAtBest({ technology: words }: Offer, { technologies }: Ratings): number | null {
  if (technologies.length === 0) return 0;
  const carries = (id: string) => technologyOf(id)?.words.every((word) => words.includes(word)) ?? false;
  const rank = technologies.findIndex(carries);
  return rank < 0 ? null : rank;
}

/** Puts the offer of a row among the best if it fits; `shared` are the notes known of its shelf. */
type Judge = (row: number, shared: readonly Note[] | undefined) => void;

/** What is looked for, and what was found so far. */
type Search = { readonly ratings: Ratings; readonly best: BestList; readonly judge: Judge };

/** Looks along a bay from the value wanted upwards, then downwards, for as long as what comes may be among the best. */
function walk(index: OfferIndex, bay: Bay, aisle: Aisle, search: Search): void {
  const { values } = index;
  const { ratings } = search;
  const span = nominalSpan(ratings);
  const from = span ? firstNotBelow(values, bay.from, bay.to, span.min * (1 - 1e-8)) : bay.from;
  const to = span ? firstNotBelow(values, from, bay.to, span.max * (1 + 1e-8)) : bay.to;
  const middle = ratings.wanted === null ? from : firstNotBelow(values, from, to, ratings.wanted);
  for (let first = middle; first < to; ) {
    const end = firstAbove(values, first, to, values[first]!);
    if (!lookAtRun(index, first, end, aisle, search)) break;
    first = end;
  }
  for (let end = middle; end > from; ) {
    const first = firstNotBelow(values, from, end, values[end - 1]!);
    if (!lookAtRun(index, first, end, aisle, search)) break;
    end = first;
  }
}

/** Has judged what may be among the best of offers of one value, the cheapest first; false where none of them may. */
function lookAtRun(
  { values, prices, rows, shelves }: OfferIndex,
  first: number,
  end: number,
  aisle: Aisle,
  { ratings, best, judge }: Search,
): boolean {
  const distance = distanceOf(values[first]!, ratings.wanted);
  if (!best.mayTake(aisle, distance, 0, 0)) return false;
  for (let place = first; place < end && best.mayTake(aisle, distance, 0, prices[place]!); place++) {
    const shelf = aisle.shelved[shelves[place]!];
    if (shelf && best.mayTake(aisle, distance, shelf.over, prices[place]!)) judge(rows[place]!, shelf.shared);
  }
  return true;
}

/** The best matches so far; of equal rank the earlier row stands first. */
type BestList = {
  readonly mayTake: (standing: Standing, distance: number, over: number, price: number) => boolean;
  readonly take: (match: Match, row: number) => void;
  readonly matches: () => Match[];
};

function bestList(most: number): BestList {
  const found: { readonly match: Match; readonly row: number }[] = [];
  const inOrder = () => found.sort((a, b) => compareRanks(a.match.rank, b.match.rank) || a.row - b.row);
  let worst: Rank | null = null;
  const take = (match: Match, row: number) => {
    found.push({ match, row });
    if (found.length < most) return;
    inOrder().splice(most);
    worst = found.at(-1)?.match.rank ?? null;
  };
  const mayTake = ({ technology, tight, care }: Standing, distance: number, over: number, price: number) => {
    if (worst === null) return true;
    const apart = technology - worst[0]! || tight - worst[1]! || care - worst[2]! || distance - worst[3]!;
    return (apart || over - worst[4]! || (price === worst[5] ? 0 : price - worst[5]!)) <= 0;
  };
  return { mayTake, take, matches: () => inOrder().map(({ match }) => match) };
}

/** The first place from which on values are not below the one given. */
function firstNotBelow(values: Float64Array, from: number, to: number, value: number): number {
  let low = from;
  let high = to;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The first place from which on values are above the one given. */
function firstAbove(values: Float64Array, from: number, to: number, value: number): number {
  let low = from;
  let high = to;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! > value) high = middle;
    else low = middle + 1;
  }
  return low;
}
