import type { Offer } from "../offer.js";
import { handoutsOf } from "../order/papers.js";
import { whyHere } from "../order/reasons.js";
import type { Basket, Plan } from "../plan.js";
import { emptyRow } from "../present/sheet.js";
import { ORDER_SHEET, type OrderRow } from "../present/sheets/shop.js";
import type { DemandLine } from "./demand.js";

/** The price of a unit when so many are bought, in the vendor's currency. */
function unitPrice(offer: Offer, units: number): number {
  return offer.breaks.filter(([from]) => from <= units).at(-1)?.[1] ?? offer.breaks[0]?.[1] ?? 0;
}

/**
 * A plan as rows of Order: what to buy where, for which parts, what is over, and why there. Vendor by vendor.
 *
 * @param lines The lines that the basket was made from.
 */
export function orderRows(
  plan: Plan,
  basket: Basket,
  lines: readonly DemandLine[],
  offers: readonly Offer[],
): readonly OrderRow[] {
  const byId = new Map(offers.map((offer) => [offer.id, offer]));
  const handouts = handoutsOf(basket, plan, lines);
  const rows = plan.orders.map(({ offer: id, units }): OrderRow => {
    const offer = byId.get(id)!;
    const parts = handouts.filter((handout) => handout.offer === id && handout.part !== null);
    const wanted = parts.reduce((sum, handout) => sum + handout.pieces, 0);
    const price = unitPrice(offer, units);
    return {
      ...emptyRow(ORDER_SHEET),
      vendor: offer.vendor,
      stockNumber: offer.stockNumber,
      description: offer.description,
      wanted,
      units,
      pack: offer.pack,
      price,
      cost: price * units,
      currency: offer.currency,
      forWhom: parts.map(({ part }) => part).join(" "),
      spares: units * offer.pack - wanted,
      why: whyHere(basket, plan, id),
      state: "to order",
    };
  });
  return rows.sort((a, b) => (a.vendor ?? "").localeCompare(b.vendor ?? ""));
}
