import type { BasketOffer } from "../plan.js";

/** A stretch of unit counts with one price: `least` to `most` units, both multiples; `price` is that of one unit. */
export type Tier = { readonly least: number; readonly most: number; readonly price: number };

/** So many units of an offer, and what they cost in the vendor's currency. */
export type Purchase = { readonly units: number; readonly cost: number };

/** Sums of money closer than this are the same: floating point, no fraction of a cent. */
export const ROUNDING = 1e-9;

type Terms = Pick<BasketOffer, "pack" | "minimum" | "multiple" | "stock" | "breaks">;

/**
 * The unit counts that may be bought, as stretches of one price each.
 *
 * Minimum, multiple and stock are obeyed; a break counts from its own number of units on, for all units bought.
 *
 * @example tiersOf({ pack: 1, minimum: 2, multiple: 2, stock: 11, breaks: [[1, 0.3], [5, 0.2]] })
 * // [{ least: 2, most: 4, price: 0.3 }, { least: 6, most: 10, price: 0.2 }]
 */
export function tiersOf({ minimum, multiple, stock, breaks }: Terms): readonly Tier[] {
  const up = (units: number) => Math.ceil(units / multiple) * multiple;
  const down = (units: number) => Math.floor(units / multiple) * multiple;
  return breaks
    .map(([from, price], i) => {
      const end = Math.min((breaks[i + 1]?.[0] ?? Number.POSITIVE_INFINITY) - 1, stock ?? Number.POSITIVE_INFINITY);
      return { least: up(Math.max(from, minimum, 1)), most: Number.isFinite(end) ? down(end) : end, price };
    })
    .filter((tier) => tier.least <= tier.most);
}

/** What so many units cost in the vendor's currency; null where so many can't be bought. */
export function costOfUnits(offer: Terms, units: number): number | null {
  const tier = tiersOf(offer).find(({ least, most }) => least <= units && units <= most);
  return tier && units % offer.multiple === 0 ? units * tier.price : null;
}

/**
 * The cheapest way to get at least so many pieces from one offer; more than asked for where a break makes that cheaper.
 *
 * @returns Null where the offer's stock is too small. Of two equally cheap ways the one with more units.
 * @example cheapestUnits({ pack: 1, minimum: 1, multiple: 1, stock: null, breaks: [[1, 0.3], [10, 0.2]] }, 8) // { units: 10, cost: 2 }
 */
export function cheapestUnits(offer: Terms, pieces: number): Purchase | null {
  return cheapestOf(tiersOf(offer), offer, pieces);
}

function cheapestOf(tiers: readonly Tier[], { pack, multiple }: Terms, pieces: number): Purchase | null {
  const wanted = Math.ceil(Math.ceil(pieces / pack) / multiple) * multiple;
  let best: Purchase | null = null;
  for (const { least, most, price } of tiers) {
    const units = Math.max(least, wanted);
    if (units <= most && (!best || units * price <= best.cost + ROUNDING)) best = { units, cost: units * price };
  }
  return best;
}

/** The fewest units that hold at least so many pieces; null where the stock is too small. */
export function leastUnits(offer: Terms, pieces: number): number | null {
  const wanted = Math.ceil(Math.ceil(pieces / offer.pack) / offer.multiple) * offer.multiple;
  const tier = tiersOf(offer).find(({ most }) => wanted <= most);
  return tier ? Math.max(tier.least, wanted) : null;
}

/** What at least 0, 1, 2 ... so many pieces cost from one offer, in the vendor's currency; infinite past its stock. */
export function costCurve(offer: Terms, pieces: number): Float64Array {
  const tiers = tiersOf(offer);
  const curve = new Float64Array(pieces + 1);
  for (let p = 1; p <= pieces; p++) curve[p] = cheapestOf(tiers, offer, p)?.cost ?? Number.POSITIVE_INFINITY;
  return curve;
}
