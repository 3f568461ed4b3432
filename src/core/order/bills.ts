import type { Basket, Plan, Vendor } from "../plan.js";
import { costOfUnits } from "./units.js";

/** What one vendor's order comes to: goods, shipping and small-order fee in the vendor's currency, the total in the user's. */
export type Bill = {
  readonly vendor: string;
  readonly goods: number;
  readonly shipping: number;
  readonly fee: number;
  readonly total: number;
};

/** Room for the rounding of sums of prices: a hundredth of a cent. */
export const HAIR = 1e-4;

/** Whether goods reach a threshold; none is always reached. */
export const reaches = (goods: number, threshold: number | null): boolean =>
  threshold === null || goods >= threshold - HAIR;

/** A vendor's bill for goods of so much; the fee is infinite where the order would be refused. */
export function billOf(vendor: Vendor, goods: number): Bill {
  const shipping = vendor.freeFrom !== null && reaches(goods, vendor.freeFrom) ? 0 : vendor.shipping;
  const fee = reaches(goods, vendor.minimumOrder) ? 0 : (vendor.smallOrderFee ?? Number.POSITIVE_INFINITY);
  return { vendor: vendor.id, goods, shipping, fee, total: (goods + shipping + fee) * vendor.rate };
}

/** The bill of each vendor that is ordered from, in the order of the basket's vendors. */
export function billsOf(basket: Basket, orders: Plan["orders"]): readonly Bill[] {
  const goods = new Map<string, number>();
  const offers = new Map(basket.offers.map((offer) => [offer.id, offer]));
  for (const { offer: id, units } of orders) {
    const offer = offers.get(id);
    if (offer) goods.set(offer.vendor, (goods.get(offer.vendor) ?? 0) + (costOfUnits(offer, units) ?? Number.NaN));
  }
  return basket.vendors.flatMap((vendor) => {
    const sum = goods.get(vendor.id);
    return sum === undefined ? [] : [billOf(vendor, sum)];
  });
}

/** What orders cost in all, in the user's currency, unrounded; infinite where a vendor would refuse, NaN where units can't be bought. */
export function costOf(basket: Basket, orders: Plan["orders"]): number {
  return billsOf(basket, orders).reduce((sum, bill) => sum + bill.total, 0);
}

/** Money to the cent. @example toCent(18.1501) // 18.15 */
export const toCent = (money: number): number => Math.round(money * 100) / 100;
