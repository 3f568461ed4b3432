import type { Basket, BasketLine, BasketOffer, Vendor } from "../plan.js";
import { costCurve, tiersOf } from "./units.js";

/**
 * An offer that may be bought, with its vendor and the lines it fits.
 *
 * `demand` is what all of these lines want, in pieces; `curve` what 0, 1, 2 ... up to so many pieces cost, in the user's
 * currency, infinite past the stock.
 */
export type Candidate = {
  readonly offer: BasketOffer;
  readonly vendor: Vendor;
  readonly lines: readonly BasketLine[];
  readonly demand: number;
  readonly curve: Float64Array;
};

/** The part of a basket that can play a role: vendors not excluded, offers that fit a line and can be had. */
export type Scope = {
  readonly vendors: readonly Vendor[];
  readonly candidates: readonly Candidate[];
  readonly byLine: ReadonlyMap<string, readonly Candidate[]>;
};

/** Looks a basket through once for who could supply what. */
export function scopeOf(basket: Basket): Scope {
  const vendors = basket.vendors.filter(({ id }) => !basket.options.excluded.includes(id));
  const vendorOf = new Map(vendors.map((vendor) => [vendor.id, vendor]));
  const linesOf = new Map<string, BasketLine[]>();
  for (const line of basket.lines)
    for (const id of new Set(line.fits)) linesOf.set(id, [...(linesOf.get(id) ?? []), line]);
  const candidates = basket.offers.flatMap((offer): Candidate[] => {
    const [vendor, lines] = [vendorOf.get(offer.vendor), linesOf.get(offer.id)];
    if (!vendor || !lines || tiersOf(offer).length === 0) return [];
    const demand = lines.reduce((sum, line) => sum + line.pieces, 0);
    return [{ offer, vendor, lines, demand, curve: costCurve(offer, demand).map((cost) => cost * vendor.rate) }];
  });
  const byLine = new Map<string, Candidate[]>(basket.lines.map((line) => [line.id, []]));
  for (const candidate of candidates) for (const line of candidate.lines) byLine.get(line.id)!.push(candidate);
  return { vendors, candidates, byLine };
}
