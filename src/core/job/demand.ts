import { type Match, matchOf } from "../match/matchOffers.js";
import { indexOffers } from "../match/offerIndex.js";
import { offersInPlay } from "../match/offersInPlay.js";
import type { Offer } from "../offer.js";
import type { Basket, BasketLine, BasketOffer, Vendor } from "../plan.js";
import type { Ratings } from "../ratings.js";

/** What one part of one set asks of the vendors: its limits, how many pieces, and the offer the user picked, if any. */
export type Demand = {
  readonly part: string;
  readonly ratings: Ratings;
  readonly pieces: number;
  readonly pick: string | null;
};

/** Parts that ask the same, of whatever set: they are one line of the basket. */
export type DemandLine = {
  readonly id: string;
  readonly demands: readonly Demand[];
  readonly pieces: number;
  readonly matches: readonly Match[];
};

/** What makes two demands one: every limit and the pick, but not the reasons. */
function sameness({ ratings, pick }: Demand): string {
  const { because, rejected, aim, fit, ...limits } = ratings;
  return JSON.stringify([limits, aim?.text ?? null, pick]);
}

/**
 * The lines of a basket: demands that ask the same are added up over all sets, and each line knows its offers, best first.
 *
 * Offers out of stock or no longer made are not among them; a pick of the user's is the line's only offer.
 *
 * @param spares How many pieces more to have, as a ratio, rounded up.
 */
export function demandLines(demands: readonly Demand[], offers: readonly Offer[], spares = 0): readonly DemandLine[] {
  const groups = new Map<string, Demand[]>();
  for (const demand of demands) {
    const key = sameness(demand);
    groups.set(key, [...(groups.get(key) ?? []), demand]);
  }
  const find = offersInPlay(indexOffers(offers), (row) => offers[row]!);
  return [...groups.values()].map((group) => {
    const { ratings, pick } = group[0]!;
    const wanted = group.reduce((sum, demand) => sum + demand.pieces, 0);
    const pieces = Math.ceil(wanted * (1 + spares));
    const picked = offers
      .filter(({ id, kind }) => id === pick && kind === ratings.kind)
      .map((offer) => matchOf(ratings, offer, pieces));
    const had = () => find(ratings, { pieces }).filter(({ offer }) => isToBeHad(offer));
    return { id: group[0]!.part, demands: group, pieces, matches: picked.length > 0 ? picked : had() };
  });
}

const isToBeHad = (offer: Offer) =>
  offer.breaks.length > 0 && (offer.status === "in-stock" || offer.status === "last-time-buy");

/**
 * The ordering problem of some lines: every offer that fits any of them, and the vendors' terms.
 *
 * Lines that nothing fits are left out: they can't be bought, and say so in Parts.
 */
export function basketOf(
  lines: readonly DemandLine[],
  vendors: readonly Vendor[],
  options: Basket["options"] = { maxVendors: null, excluded: [] },
): Basket {
  const buyable = lines.filter((line) => line.matches.length > 0);
  const offers = new Map(buyable.flatMap(({ matches }) => matches.map(({ offer }) => [offer.id, offer] as const)));
  return {
    vendors,
    offers: [...offers.values()].map(basketOffer),
    lines: buyable.map(
      (line): BasketLine => ({
        id: line.id,
        pieces: line.pieces,
        fits: line.matches.map(({ offer }) => offer.id),
        single: false,
      }),
    ),
    options,
  };
}

const basketOffer = ({ id, vendor, pack, minimum, multiple, stock, breaks }: Offer): BasketOffer => ({
  ...{ id, vendor, pack, minimum, multiple, stock },
  breaks,
});
