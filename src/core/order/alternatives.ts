import type { Basket } from "../plan.js";
import { planFrom } from "./firstPlan.js";
import { scopeOf } from "./scope.js";

/** Another way to order, and what it costs in the user's currency; null where it can't serve every line. */
export type Alternative = { readonly what: string; readonly cost: number | null };

/**
 * What ordering costs without planning: each line where its goods are cheapest, and everything from one vendor.
 *
 * A plan is worth the difference. Where an offer serves several lines its packs are shared here too.
 *
 * @example alternativesTo(basket)[0] // { what: "each line where it is cheapest", cost: 41.2 }
 */
export function alternativesTo(basket: Basket): readonly Alternative[] {
  const scope = scopeOf(basket);
  const costFrom = (allowed: (vendor: string) => boolean) =>
    planFrom(
      basket,
      scope,
      scope.vendors.map(({ id }) => allowed(id)),
    )?.cost ?? null;
  return [
    { what: "each line where it is cheapest", cost: costFrom(() => true) },
    ...scope.vendors.map(({ id }) => ({ what: `all from ${id}`, cost: costFrom((vendor) => vendor === id) })),
  ];
}

/** The basket without a vendor. */
export const withoutVendor = (basket: Basket, vendor: string): Basket => ({
  ...basket,
  options: { ...basket.options, excluded: [...basket.options.excluded, vendor] },
});

/** The basket with some offers gone. */
export const withoutOffers = (basket: Basket, gone: readonly string[]): Basket => ({
  ...basket,
  offers: basket.offers.filter(({ id }) => !gone.includes(id)),
});
