import type { Offer } from "../offer.js";
import type { Ratings } from "../ratings.js";
import { fits, notesOn, whyOf } from "./judge.js";
import type { Note } from "./note.js";
import { compareRanks, type Rank, rankOf } from "./rank.js";

/** An offer that fits (or that the user picked all the same), with what is tight, over, or to be done before fitting. */
export type Match = { readonly offer: Offer; readonly rank: Rank; readonly notes: readonly Note[] };

/** An offer of the right kind that does not fit, and why, in words and as notes. */
export type Refusal = { readonly offer: Offer; readonly why: string; readonly notes: readonly Note[] };

/** Matches, best first, and refusals, the nearest miss first. */
export type Matching = { readonly matches: readonly Match[]; readonly refused: readonly Refusal[] };

/** How many pieces are wanted (1), and the id of the offer the user picked before (none). */
export type MatchOptions = { readonly pieces?: number; readonly pick?: string | null };

/**
 * The offers that meet the ratings, best first, and every other offer of the same kind with the reason it was refused.
 *
 * The user's pick stands first even where a limit refuses it: the refusal then stands among its notes. Offers of another
 * kind of part are not listed. Offers of equal rank keep the order they came in.
 *
 * @example matchOffers(ratings, offers).matches[0]?.offer.stockNumber
 */
export function matchOffers(ratings: Ratings, offers: readonly Offer[], options: MatchOptions = {}): Matching {
  const pieces = options.pieces ?? 1;
  const matches: Match[] = [];
  const refused: Refusal[] = [];
  for (const offer of offers) {
    if (offer.kind !== ratings.kind) continue;
    const notes = notesOn(ratings, offer, pieces);
    if (fits(notes) || offer.id === options.pick) matches.push(matchOf(ratings, offer, pieces, notes));
    else refused.push({ offer, why: whyOf(notes), notes });
  }
  const isPick = (match: Match) => Number(match.offer.id === options.pick);
  matches.sort((a, b) => isPick(b) - isPick(a) || compareRanks(a.rank, b.rank));
  return { matches, refused: refused.sort((a, b) => misses(a) - misses(b)) };
}

/** An offer with its rank and notes, whether it fits or not. */
export function matchOf(
  ratings: Ratings,
  offer: Offer,
  pieces: number,
  notes: readonly Note[] = notesOn(ratings, offer, pieces),
): Match {
  return { offer, rank: rankOf(ratings, offer, notes, pieces), notes };
}

const misses = (refusal: Refusal) => refusal.notes.filter((note) => note.weight === "out").length;
