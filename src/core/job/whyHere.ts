import { billsOf } from "../order/bills.js";
import type { Basket, BasketOffer, Plan } from "../plan.js";

/** The price of one piece in the user's currency, at the offer's first price. */
function piecePrice(basket: Basket, offer: BasketOffer): number {
  const rate = basket.vendors.find(({ id }) => id === offer.vendor)?.rate ?? 1;
  return ((offer.breaks[0]?.[1] ?? Number.POSITIVE_INFINITY) / offer.pack) * rate;
}

const money = (amount: number) => amount.toFixed(2);

/**
 * Why an offer of the plan is bought where it is, in one sentence: it is the cheapest that fits, or what the cheaper one
 * would cost beside its price.
 *
 * @param offerId An offer that the plan buys.
 */
export function whyHere(basket: Basket, plan: Plan, offerId: string): string {
  const own = basket.offers.find(({ id }) => id === offerId)!;
  const served = plan.supplies.filter(({ offer }) => offer === offerId).map(({ line }) => line);
  const rivals = basket.lines
    .filter(({ id }) => served.includes(id))
    .flatMap(({ fits }) => basket.offers.filter(({ id }) => id !== offerId && fits.includes(id)));
  if (rivals.length === 0) return "the only offer that fits";
  const ofOthers = rivals.filter(({ vendor }) => vendor !== own.vendor);
  if (ofOthers.length === 0) return "only this vendor has one that fits";
  const cheapest = ofOthers.reduce((a, b) => (piecePrice(basket, b) < piecePrice(basket, a) ? b : a));
  const less = piecePrice(basket, own) - piecePrice(basket, cheapest);
  if (less <= 0) return "the cheapest that fits";
  return dearer(basket, plan, cheapest, less);
}

function dearer(basket: Basket, plan: Plan, cheapest: BasketOffer, less: number): string {
  const { vendor: rival, pack, minimum } = cheapest;
  const gap = `${rival} is ${money(less)} a piece cheaper`;
  const isUsed = billsOf(basket, plan.orders).some((bill) => bill.vendor === rival);
  const terms = basket.vendors.find(({ id }) => id === rival);
  if (!isUsed && terms && terms.shipping > 0)
    return `${gap}, but its shipping of ${money(terms.shipping * terms.rate)} would come on top`;
  if (pack > 1) return `${gap}, but sells packs of ${pack}`;
  if (minimum > 1) return `${gap}, but no fewer than ${minimum}`;
  return `${gap}, but buying here costs less in all`;
}
