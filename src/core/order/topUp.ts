import type { Basket, BasketOffer, Plan, Vendor } from "../plan.js";
import { billOf, billsOf, HAIR, reaches } from "./bills.js";
import type { Scope } from "./scope.js";
import { costOfUnits, tiersOf } from "./units.js";

type Orders = Plan["orders"];

/** One offer with more units than before, and how much that adds to the vendor's goods. */
type Extra = { readonly offer: string; readonly units: number; readonly goods: number };

/**
 * The orders with more units of one offer for each vendor whose threshold that reaches at a gain: free shipping, a spared fee, a refused order.
 */
export function toppedUp(basket: Basket, scope: Scope, orders: Orders): Orders {
  const units = new Map(orders.map((order) => [order.offer, order.units]));
  for (const bill of billsOf(basket, orders)) {
    const vendor = scope.vendors.find(({ id }) => id === bill.vendor)!;
    const offers = scope.candidates.filter((one) => one.vendor === vendor).map(({ offer }) => offer);
    const extra = bestExtra(vendor, bill.goods, offers, units);
    if (extra) units.set(extra.offer, extra.units);
  }
  return [...units].map(([offer, count]) => ({ offer, units: count }));
}

/** The one extra after which the vendor's bill is smallest; null where none makes it smaller. */
function bestExtra(vendor: Vendor, goods: number, offers: readonly BasketOffer[], units: ReadonlyMap<string, number>) {
  const missing = [vendor.minimumOrder, vendor.freeFrom].filter((threshold) => !reaches(goods, threshold));
  let [best, least]: [Extra | null, number] = [null, billOf(vendor, goods).total - HAIR];
  for (const threshold of missing)
    for (const offer of offers)
      for (const extra of extrasOf(offer, units.get(offer.id) ?? 0, threshold! - goods)) {
        const { total } = billOf(vendor, goods + extra.goods);
        if (total < least) [best, least] = [extra, total];
      }
  return best;
}

/** At each price of an offer, the fewest units that cost at least `missing` more than those already bought. */
function extrasOf(offer: BasketOffer, units: number, missing: number): Extra[] {
  const before = units > 0 ? costOfUnits(offer, units)! : 0;
  return tiersOf(offer).flatMap(({ least, most, price }): Extra[] => {
    if (price === 0) return [];
    const wanted = Math.ceil((before + missing - HAIR) / price / offer.multiple) * offer.multiple;
    const more = Math.max(least, wanted);
    return more > most || more <= units ? [] : [{ offer: offer.id, units: more, goods: more * price - before }];
  });
}
