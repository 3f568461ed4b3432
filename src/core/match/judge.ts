import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { checkSafety, checkSize, checkSupply, checkTaper, checkTechnology, checkTemperature } from "./checkBuild.js";
import { checkTolerance, checkVolts, checkWatts } from "./checkRatings.js";
import { checkValue } from "./checkValue.js";
import type { Check, Limit, Note } from "./note.js";

/** Every limit with its check, in the order of `LIMITS`. */
export const CHECKS: readonly (readonly [Limit, Check])[] = [
  ["value", checkValue],
  ["technology", checkTechnology],
  ["safety", checkSafety],
  ["volts", checkVolts],
  ["watts", checkWatts],
  ["tolerance", checkTolerance],
  ["temperature", checkTemperature],
  ["taper", checkTaper],
  ["size", checkSize],
  ["supply", checkSupply],
];

/** All that the checks have to say of one offer of the right kind. */
export function notesOn(ratings: Ratings, offer: Offer, pieces: number): readonly Note[] {
  return CHECKS.flatMap(([, check]) => check(ratings, offer, pieces));
}

/** Whether nothing in the notes refuses the offer. */
export const fits = (notes: readonly Note[]): boolean => notes.every((note) => note.weight !== "out");

/** The reasons for a refusal, each a sentence, one after the other. @example "250 V where 630 V is needed; out of stock" */
export const whyOf = (notes: readonly Note[]): string =>
  notes
    .filter((note) => note.weight === "out")
    .map((note) => note.text)
    .join("; ");
