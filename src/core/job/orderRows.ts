import type { Offer } from "../offer.js";
import { handoutsOf } from "../order/papers.js";
import { whyHere } from "../order/reasons.js";
import { scopeOf } from "../order/scope.js";
import type { Basket, Plan } from "../plan.js";
import { type PiecesFor, writeForWhom } from "../present/forWhom.js";
import { emptyRow } from "../present/sheet.js";
import { ORDER_SHEET, type OrderRow } from "../present/sheets/shop.js";
import type { DemandLine } from "./demand.js";

/** The price of a unit when so many are bought, in the vendor's currency. */
function unitPrice(offer: Offer, units: number): number {
  return offer.breaks.filter(([from]) => from <= units).at(-1)?.[1] ?? offer.breaks[0]?.[1] ?? 0;
}

/** The pieces of each part once, in the order in which parts are first named. */
function together(shares: readonly PiecesFor[]): readonly PiecesFor[] {
  const sums = new Map<string, number>();
  for (const { part, pieces } of shares) sums.set(part, (sums.get(part) ?? 0) + pieces);
  return [...sums].map(([part, pieces]) => ({ part, pieces }));
}

/**
 * A plan as rows of Order: what to buy where, for which parts, what is over, and why there. Vendor by vendor.
 *
 * @param lines The lines that the basket was made from.
 * @param currencyOf The currency of a vendor's prices, for offers that print none of their own.
 */
export function orderRows(
  plan: Plan,
  basket: Basket,
  lines: readonly DemandLine[],
  offers: readonly Offer[],
  currencyOf: (vendor: string) => string | null = () => null,
): readonly OrderRow[] {
  const byId = new Map(offers.map((offer) => [offer.id, offer]));
  const scope = scopeOf(basket);
  const handouts = handoutsOf(basket, plan, lines);
  const rows = plan.orders.map(({ offer: id, units }): OrderRow => {
    const offer = byId.get(id)!;
    const parts = handouts.flatMap(({ offer: of, part, pieces }) =>
      of === id && part !== null ? [{ part, pieces }] : [],
    );
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
      currency: price === 0 ? null : (offer.currency ?? currencyOf(offer.vendor)),
      forWhom: writeForWhom(together(parts)),
      spares: units * offer.pack - wanted,
      why: whyHere(basket, plan, id, scope),
      state: "to order",
    };
  });
  return rows.sort((a, b) => (a.vendor ?? "").localeCompare(b.vendor ?? ""));
}
