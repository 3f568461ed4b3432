import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { checkSafety, checkSize, checkSupply, checkTaper, checkTechnology, checkTemperature } from "./checkBuild.js";
import { checkTolerance, checkVolts, checkWatts } from "./checkRatings.js";
import { checkValue } from "./checkValue.js";
import { type Check, met, type Note } from "./note.js";

/** The checks in the order of `LIMITS`; those in the middle look at nothing but what a whole shelf of offers shares. */
const FIRST: readonly Check[] = [checkValue, checkTechnology];
const SHARED: readonly Check[] = [checkSafety, checkVolts, checkWatts, checkTolerance, checkTemperature, checkTaper];
const LAST: readonly Check[] = [checkSize, checkSupply];

/** What the checks say that look at neither value nor words, size or supply: the same for all offers alike in ratings. */
export const sharedNotes = (ratings: Ratings, offer: Offer): readonly Note[] => said(SHARED, ratings, offer, 1);

/**
 * All that the checks have to say of one offer of the right kind.
 *
 * @param shared What `sharedNotes` said of an offer alike, where that is known.
 */
export function notesOn(
  ratings: Ratings,
  offer: Offer,
  pieces: number,
  shared: readonly Note[] = sharedNotes(ratings, offer),
): readonly Note[] {
  const first = said(FIRST, ratings, offer, pieces);
  const last = said(LAST, ratings, offer, pieces);
  return first.length + last.length === 0 ? shared : [...first, ...shared, ...last];
}

function said(checks: readonly Check[], ratings: Ratings, offer: Offer, pieces: number): readonly Note[] {
  let notes = met;
  for (const check of checks) {
    const more = check(ratings, offer, pieces);
    if (more.length > 0) notes = notes.length === 0 ? more : [...notes, ...more];
  }
  return notes;
}

/** Whether nothing in the notes refuses the offer. */
export const fits = (notes: readonly Note[]): boolean => notes.every((note) => note.weight !== "out");

/** The reasons for a refusal, each a sentence, one after the other. @example "250 V where 630 V is needed; out of stock" */
export const whyOf = (notes: readonly Note[]): string =>
  notes
    .filter((note) => note.weight === "out")
    .map((note) => note.text)
    .join("; ");
