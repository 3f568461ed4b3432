import { type Match, matchOf, matchOffers } from "../match/matchOffers.js";
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
  /** Demands with the same mark have to be alike: all of them come from one offer. */
  readonly alike?: string | null;
};

/** How many pieces more to have of each kind of part, as ratios of what is wanted. */
export type Spares = { readonly resistor: number; readonly capacitor: number; readonly other: number };

/** No spares of anything. */
export const NO_SPARES: Spares = { resistor: 0, capacitor: 0, other: 0 };

/** Parts that ask the same, of whatever set: they are one line of the basket. */
export type DemandLine = {
  readonly id: string;
  readonly demands: readonly Demand[];
  readonly pieces: number;
  readonly matches: readonly Match[];
  /** Whether all pieces have to come from one offer. */
  readonly single: boolean;
};

/** What makes two demands one: every limit and the pick, but not the reasons. */
function sameness({ ratings, pick, alike }: Demand): string {
  if (alike) return `alike ${alike}`;
  const { because, rejected, aim, fit, ...limits } = ratings;
  return JSON.stringify([limits, aim?.text ?? null, pick]);
}

/**
 * The lines of a basket: demands that ask the same are added up over all sets, and each line knows its offers, best first.
 *
 * Offers out of stock or no longer made are not among them; a pick of the user's is the line's only offer. Parts that must
 * be alike are a line of their own, and its offers fit each of them.
 *
 * @param spares What to have more of each kind, rounded up.
 */
export function demandLines(
  demands: readonly Demand[],
  offers: readonly Offer[],
  spares: Spares = NO_SPARES,
): readonly DemandLine[] {
  const groups = new Map<string, Demand[]>();
  for (const demand of demands) {
    const key = sameness(demand);
    groups.set(key, [...(groups.get(key) ?? []), demand]);
  }
  const find = offersInPlay(indexOffers(offers), (row) => offers[row]!);
  const named = new Map<string, number>();
  return [...groups.values()].map((group) => {
    const [first, ...others] = group as [Demand, ...Demand[]];
    const wanted = group.reduce((sum, demand) => sum + demand.pieces, 0);
    const pieces = wanted + Math.ceil(wanted * sparesOf(spares, first) - 1e-9);
    const single = Boolean(first.alike);
    const picked = pickedFor(first, pieces, offers);
    const fitting =
      picked.length > 0 ? picked : find(first.ratings, { pieces }).filter(({ offer }) => isToBeHad(offer));
    const matches = single ? others.reduce((left, demand) => among(left, demand, pieces), fitting) : fitting;
    const nth = 1 + (named.get(first.part) ?? 0);
    named.set(first.part, nth);
    return { id: nth === 1 ? first.part : `${first.part} piece ${nth}`, demands: group, pieces, matches, single };
  });
}

const sparesOf = (spares: Spares, { ratings: { kind } }: Demand) =>
  kind === "resistor" || kind === "capacitor" ? spares[kind] : spares.other;

/** The offer that the user picked for a demand, fitting or not; none where there is no such offer. */
const pickedFor = ({ ratings, pick }: Demand, pieces: number, offers: readonly Offer[]): readonly Match[] =>
  offers.filter(({ id, kind }) => id === pick && kind === ratings.kind).map((offer) => matchOf(ratings, offer, pieces));

/** Of some matches those whose offers fit another demand too, or are picked for it. */
function among(matches: readonly Match[], demand: Demand, pieces: number): readonly Match[] {
  const offers = matches.map(({ offer }) => offer);
  const picked = pickedFor(demand, pieces, offers);
  const fitting = picked.length > 0 ? picked : matchOffers(demand.ratings, offers, { pieces }).matches;
  return matches.filter((match) => fitting.some(({ offer }) => offer === match.offer));
}

/** Whether an offer can be bought: it has a price, and is there. */
export const isToBeHad = (offer: Offer) =>
  offer.breaks.length > 0 && (offer.status === "in-stock" || offer.status === "last-time-buy");

/** What turns an offer's prices into its vendor's currency; null where the rate is not known. */
export type PriceFactor = (offer: Offer) => number | null;

/**
 * The ordering problem of some lines: every offer that fits any of them, and the vendors' terms.
 *
 * Lines that nothing fits are left out: they can't be bought, and say so in Parts. So are offers whose price can't be
 * turned into their vendor's currency.
 */
export function basketOf(
  lines: readonly DemandLine[],
  vendors: readonly Vendor[],
  options: Basket["options"] = { maxVendors: null, excluded: [] },
  factorOf: PriceFactor = () => 1,
): Basket {
  const offers = new Map<string, BasketOffer>();
  for (const { offer } of lines.flatMap(({ matches }) => matches)) {
    const factor = offers.has(offer.id) ? null : factorOf(offer);
    if (factor !== null) offers.set(offer.id, basketOffer(offer, factor));
  }
  const basketLines = lines.map(({ id, pieces, single, matches }): BasketLine => {
    const fits = matches.flatMap(({ offer }) => (offers.has(offer.id) ? [offer.id] : []));
    return { id, pieces, single, fits };
  });
  return { vendors, offers: [...offers.values()], lines: basketLines.filter(({ fits }) => fits.length > 0), options };
}

const basketOffer = ({ id, vendor, pack, minimum, multiple, stock, breaks }: Offer, factor: number): BasketOffer => ({
  ...{ id, vendor, pack, minimum, multiple, stock },
  breaks: breaks.map(([from, price]) => [from, price * factor]),
});
