import { costOf } from "../order/bills.js";
import { cheapestUnits } from "../order/units.js";
import type { Basket } from "../plan.js";

/**
 * What it would cost to buy each line where it alone is cheapest, each by itself, with every vendor's shipping: what a plan
 * is compared with. In the user's currency; null where a line can't be bought so.
 */
export function cheapestPerLine(basket: Basket): number | null {
  const rates = new Map(basket.vendors.map(({ id, rate }) => [id, rate]));
  const units = new Map<string, number>();
  for (const line of basket.lines) {
    const ways = basket.offers
      .filter(({ id, vendor }) => line.fits.includes(id) && !basket.options.excluded.includes(vendor))
      .flatMap((offer) => {
        const bought = cheapestUnits(offer, line.pieces);
        return bought ? [{ offer, bought, cost: bought.cost * (rates.get(offer.vendor) ?? 1) }] : [];
      });
    if (ways.length === 0) return null;
    const best = ways.reduce((a, b) => (b.cost < a.cost ? b : a));
    units.set(best.offer.id, (units.get(best.offer.id) ?? 0) + best.bought.units);
  }
  const cost = costOf(
    basket,
    [...units].map(([offer, count]) => ({ offer, units: count })),
  );
  return Number.isFinite(cost) ? cost : null;
}
