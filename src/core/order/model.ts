import type { Basket } from "../plan.js";
import { atLeast, atMost, type Draft, type Milp, type Terms } from "./milp.js";
import { addOffer, type OfferColumns } from "./modelOffer.js";
import { addThresholds, addVendor, type VendorColumns } from "./modelVendor.js";
import { scopeOf } from "./scope.js";

/** The ordering problem as a mixed-integer model, with what each column means; `lineRows` are the rows that serve each line. */
export type BasketModel = {
  readonly milp: Milp;
  readonly vendors: readonly VendorColumns[];
  readonly offers: readonly OfferColumns[];
  readonly lineRows: ReadonlyMap<string, number>;
};

/**
 * The definition of the basket as a mixed-integer model.
 *
 * Whole multiples for each price of each offer, pieces from offer to line, a yes or no for each vendor, for free shipping
 * and for the small-order fee. Its least cost is the cost of the best plan; it has no solution where no plan exists.
 *
 * @example modelOf(basket).milp.columns.length
 */
export function modelOf(basket: Basket): BasketModel {
  const draft: Draft = { columns: [], rows: [] };
  const scope = scopeOf(basket);
  const vendors = scope.vendors.map((vendor) => addVendor(draft, vendor));
  const columnsOf = new Map(vendors.map((columns) => [columns.vendor.id, columns]));
  const offers = scope.candidates.map((candidate) => addOffer(draft, candidate, columnsOf.get(candidate.vendor.id)!));
  for (const columns of vendors) addThresholds(draft, columns, goodsOf(columns, offers));
  const lineRows = addLines(draft, basket, offers);
  const { maxVendors } = basket.options;
  if (maxVendors !== null)
    atMost(
      draft,
      vendors.map(({ used }) => [used, 1]),
      maxVendors,
    );
  return { milp: draft, vendors, offers, lineRows };
}

function goodsOf({ vendor }: VendorColumns, offers: readonly OfferColumns[]): Terms {
  return offers
    .filter(({ candidate }) => candidate.vendor.id === vendor.id)
    .flatMap(({ candidate, tiers }) =>
      tiers.map(({ tier, multiples }) => [multiples, tier.price * candidate.offer.multiple] as const),
    );
}

/** Every line gets its pieces; one that must be alike gets them from one offer. @returns The row of each line. */
function addLines(draft: Draft, basket: Basket, offers: readonly OfferColumns[]): ReadonlyMap<string, number> {
  const supplies = new Map<string, (readonly [number, number])[]>(basket.lines.map((line) => [line.id, []]));
  for (const { flows } of offers)
    for (const { line, column, pieces } of flows) supplies.get(line.id)!.push([column, pieces]);
  return new Map(
    basket.lines.map(({ id, pieces }) => {
      atLeast(draft, supplies.get(id)!, pieces);
      return [id, draft.rows.length - 1];
    }),
  );
}
