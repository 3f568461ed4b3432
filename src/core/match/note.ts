import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";

/** The limits an offer is held to, in the order they are looked at. */
export const LIMITS = [
  "value",
  "technology",
  "safety",
  "volts",
  "watts",
  "tolerance",
  "temperature",
  "taper",
  "size",
  "supply",
] as const;
export type Limit = (typeof LIMITS)[number];

/**
 * What one check has to say of an offer: it is out, met narrowly, more than asked for, or needs care.
 *
 * `out` refuses the offer; `tight` names what to look at before buying, `over` what is better than asked, `care` what
 * to do before fitting. The text is a sentence for the restorer.
 */
export type Note = { readonly limit: Limit; readonly weight: "out" | "tight" | "over" | "care"; readonly text: string };

/** One limit as a small pure function of ratings, offer and how many pieces are wanted; nothing to say is an empty list. */
export type Check = (ratings: Ratings, offer: Offer, pieces: number) => readonly Note[];

/** A refusal as a check returns it. @example out("watts", "1/2 W where 1 W is needed") */
export const out = (limit: Limit, text: string): readonly Note[] => [{ limit, weight: "out", text }];

/** Something to look at before buying. */
export const tight = (limit: Limit, text: string): readonly Note[] => [{ limit, weight: "tight", text }];

/** Something better than was asked for. */
export const over = (limit: Limit, text: string): readonly Note[] => [{ limit, weight: "over", text }];

/** Something to do before fitting. */
export const care = (limit: Limit, text: string): readonly Note[] => [{ limit, weight: "care", text }];

/** Nothing to say. */
export const met: readonly Note[] = [];
