import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { technologyOf } from "../rules/technologies.js";
import { nominalSpan } from "./checkValue.js";
import { CHECKS, fits, notesOn } from "./judge.js";
import type { Limit } from "./note.js";
import type { OfferIndex, Shelf } from "./offerIndex.js";
import { compareRanks, type Rank, rankOf } from "./rank.js";
import { type Ahead, ahead, type ShelfWalk, step, walkFrom } from "./shelfWalk.js";

/** How many pieces are wanted (1), and how many of the best offers are asked for (5). */
export type InPlayOptions = { readonly pieces?: number; readonly most?: number };

/** A shelf that may hold something, and what its offers have against them at least: rank figures that value and price do not move. */
type Aisle = {
  readonly shelf: Shelf;
  readonly technology: number;
  readonly tight: number;
  readonly care: number;
  readonly over: number;
};

/** Limits whose checks look at nothing but what a whole shelf shares. */
const SHARED: ReadonlySet<Limit> = new Set<Limit>(["safety", "volts", "watts", "tolerance", "temperature", "taper"]);

/**
 * A function that gives the best offers of an index for any ratings: the very ones that `matchOffers` puts first.
 *
 * Whole shelves are ruled out by their sample; the rest is looked at in the order of the best rank it could have, and
 * only until nothing better can come. The matcher's own checks decide on each offer.
 *
 * @example const find = offersInPlay(indexOffers(offers)); find(ratings, { most: 5 })
 */
export function offersInPlay(index: OfferIndex): (ratings: Ratings, options?: InPlayOptions) => Offer[] {
  const known = new Map<string, readonly (readonly Aisle[])[]>();
  return (ratings, { pieces = 1, most = 5 } = {}) => {
    const key = withoutValue(ratings);
    const aisles = known.get(key) ?? aislesOf(index, ratings);
    known.set(key, aisles);
    const best: Found[] = [];
    for (const equals of aisles) if (!gather(index, equals, ratings, { pieces, most }, best)) break;
    return best.map(({ offer }) => offer);
  };
}

/** Ratings that differ in value only open the same shelves. */
function withoutValue({
  wanted: _,
  window: __,
  old: ___,
  aim: ____,
  rejected: _____,
  because: ______,
  ...rest
}: Ratings): string {
  return JSON.stringify(rest);
}

/** The shelves that may serve, those that can only rank lower behind; shelves of equal standing together. */
function aislesOf({ shelves }: OfferIndex, ratings: Ratings): Aisle[][] {
  const open = (shelves.get(ratings.kind) ?? [])
    .map((shelf) => aisleOf(shelf, ratings))
    .filter((aisle) => aisle !== null);
  const standing = ({ technology, tight, care }: Aisle) => [technology, tight, care];
  open.sort((a, b) => compareRanks(standing(a), standing(b)));
  const groups: Aisle[][] = [];
  for (const aisle of open) {
    const last = groups.at(-1);
    if (last && compareRanks(standing(last[0]!), standing(aisle)) === 0) last.push(aisle);
    else groups.push([aisle]);
  }
  return groups;
}

function aisleOf(shelf: Shelf, ratings: Ratings): Aisle | null {
  const { sample } = shelf;
  const technology = technologyAtBest(sample, ratings);
  if (technology === null) return null;
  const isOpen = (limit: Limit) => limit === "volts" && sample.volts === null;
  const notes = CHECKS.filter(([limit]) => SHARED.has(limit) && !isOpen(limit)).flatMap(([, check]) =>
    check(ratings, sample, 1),
  );
  if (!fits(notes)) return null;
  const count = (weight: "tight" | "over") => notes.filter((note) => note.weight === weight).length;
  return { shelf, technology, tight: count("tight"), care: sample.newOldStock ? 1 : 0, over: count("over") };
}

/** The first technology whose words the shelf carries; what else it asks may differ from offer to offer. */
function technologyAtBest(sample: Offer, { technologies }: Ratings): number | null {
  if (technologies.length === 0) return 0;
  const carries = (id: string) => technologyOf(id)?.words.every((word) => sample.technology.includes(word)) ?? false;
  const rank = technologies.findIndex(carries);
  return rank < 0 ? null : rank;
}

type Found = { readonly offer: Offer; readonly rank: Rank; readonly row: number };

/** A walk along one shelf, what it has against it, and what comes next. */
type Walker = { readonly walk: ShelfWalk; readonly aisle: Aisle; next: Ahead | null };

/** Adds the best of these shelves; false when nothing that follows can be better than what there is. */
function gather(
  index: OfferIndex,
  aisles: readonly Aisle[],
  ratings: Ratings,
  options: Required<InPlayOptions>,
  best: Found[],
): boolean {
  const walkers = walkersOf(index, aisles, ratings);
  for (;;) {
    const nearest = nearestOf(walkers);
    if (!nearest?.next) return true;
    const last = best[options.most - 1];
    if (last && compareRanks(last.rank, bestRank(nearest.aisle, nearest.next)) < 0) return false;
    const { place } = nearest.next;
    consider(index, place, ratings, options, best);
    step(index, nearest.walk, place);
    nearest.next = ahead(index, nearest.walk, ratings.wanted);
  }
}

function walkersOf(index: OfferIndex, aisles: readonly Aisle[], ratings: Ratings): Walker[] {
  const span = nominalSpan(ratings);
  const walkers: Walker[] = [];
  for (const aisle of aisles) {
    const walk = walkFrom(index, aisle.shelf, ratings.wanted, span);
    if (walk) walkers.push({ walk, aisle, next: ahead(index, walk, ratings.wanted) });
  }
  return walkers;
}

/** Of walkers on shelves of equal standing, the one whose next offer may rank best. */
function nearestOf(walkers: readonly Walker[]): Walker | null {
  let nearest: Walker | null = null;
  for (const walker of walkers) {
    if (walker.next && (!nearest || isNearer(walker, nearest))) nearest = walker;
  }
  return nearest;
}

function isNearer(a: Walker, b: Walker): boolean {
  const [next, other] = [a.next!, b.next!];
  if (next.distance !== other.distance) return next.distance < other.distance;
  return a.aisle.over === b.aisle.over ? next.price < other.price : a.aisle.over < b.aisle.over;
}

/** The best rank that anything from this place on can have. */
const bestRank = ({ technology, tight, care, over }: Aisle, { distance, price }: Ahead): Rank => [
  technology,
  tight,
  care,
  distance,
  over,
  price,
];

/** Puts an offer where it belongs among the best, if it fits and is one of them. */
function consider(
  index: OfferIndex,
  place: number,
  ratings: Ratings,
  { pieces, most }: Required<InPlayOptions>,
  best: Found[],
): void {
  const row = index.order[place]!;
  const offer = index.offers[row]!;
  const notes = notesOn(ratings, offer, pieces);
  if (!fits(notes)) return;
  const rank = rankOf(ratings, offer, notes, pieces);
  const at = best.findIndex((found) => (compareRanks(rank, found.rank) || row - found.row) < 0);
  best.splice(at < 0 ? best.length : at, 0, { offer, rank, row });
  if (best.length > most) best.pop();
}
