import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import type { Note } from "./note.js";
import { technologyRank } from "./technology.js";

/**
 * Where an offer stands among those that fit: compared from the first figure on, the smaller is the better.
 *
 * In this order: position of its technology in the rule's order; notes of things to look at; whether it must be measured
 * first; distance of its value from the one wanted, by ratio; more than asked for; price of one piece in its vendor's
 * own currency, offers without a price last.
 */
export type Rank = readonly number[];

/** The rank of an offer that fits. */
export function rankOf(ratings: Ratings, offer: Offer, notes: readonly Note[], pieces: number): Rank {
  return [
    technologyRank(ratings, offer) ?? ratings.technologies.length,
    count(notes, "tight"),
    count(notes, "care"),
    distanceOf(offer.value, ratings.wanted),
    count(notes, "over"),
    piecePrice(offer, pieces),
  ];
}

/** How many notes are of a weight. */
export function count(notes: readonly Note[], weight: Note["weight"]): number {
  let found = 0;
  for (const note of notes) if (note.weight === weight) found++;
  return found;
}

/** Smaller ranks first. */
export function compareRanks(a: Rank, b: Rank): number {
  for (let i = 0; i < a.length; i++) {
    if (a[i] !== b[i]) return a[i]! < b[i]! ? -1 : 1;
  }
  return 0;
}

/** How far a value is from the one wanted, by ratio, to a millionth; 0 where either is not known. */
export function distanceOf(value: number | null, wanted: number | null): number {
  if (!wanted || !value || value < 0) return 0;
  return Math.round(Math.abs(Math.log(value / wanted)) * 1e6) / 1e6;
}

/** What one piece costs when so many are wanted, in the offer's own currency; infinite where no price is stated. */
export function piecePrice(offer: Offer, pieces: number): number {
  const units = Math.max(Math.ceil(pieces / offer.pack), offer.minimum);
  let price = offer.breaks[0]?.[1];
  for (const [from, each] of offer.breaks) if (from <= units) price = each;
  return price === undefined ? Number.POSITIVE_INFINITY : price / offer.pack;
}
