import type { Vendor } from "../plan.js";
import { addChoice, atLeast, atMost, type Draft, type Terms } from "./milp.js";

/** A vendor's columns: ordered from or not; shipping free or not, the fee paid or not (null where there is no such term). */
export type VendorColumns = {
  readonly vendor: Vendor;
  readonly used: number;
  readonly free: number | null;
  readonly fee: number | null;
};

/** Adds a vendor's yes-or-no choices: used costs the shipping, free gives it back, the fee lets a small order pass. */
export function addVendor(draft: Draft, vendor: Vendor): VendorColumns {
  const { shipping, rate, freeFrom, minimumOrder, smallOrderFee } = vendor;
  const used = addChoice(draft, shipping * rate);
  const only = (there: boolean, cost: number) => {
    if (!there) return null;
    const column = addChoice(draft, cost);
    atMost(
      draft,
      [
        [column, 1],
        [used, -1],
      ],
      0,
    );
    return column;
  };
  return {
    vendor,
    used,
    free: only(freeFrom !== null, -shipping * rate),
    fee: only(minimumOrder !== null && smallOrderFee !== null, (smallOrderFee ?? 0) * rate),
  };
}

/** Adds the thresholds, once the goods are known as a sum in the vendor's currency: free only from so much, and the minimum or its fee. */
export function addThresholds(draft: Draft, { vendor, used, free, fee }: VendorColumns, goods: Terms): void {
  const { freeFrom, minimumOrder } = vendor;
  if (free !== null) atLeast(draft, [...goods, [free, -freeFrom!]], 0);
  if (minimumOrder === null) return;
  const small: Terms = fee === null ? [] : [[fee, minimumOrder]];
  atLeast(draft, [...goods, [used, -minimumOrder], ...small], 0);
}

/**
 * What a vendor's thresholds are worth, in its own currency.
 *
 * `saves` is the most that free shipping and a spared fee give back: no plan spends more than that on goods nobody wants.
 * `demands` is the minimum of a vendor who refuses a smaller order: so much may have to be bought, wanted or not.
 */
export function worthOfThresholds({ shipping, freeFrom, minimumOrder, smallOrderFee }: Vendor) {
  const refuses = minimumOrder !== null && smallOrderFee === null;
  return {
    saves: (freeFrom === null ? 0 : shipping) + (minimumOrder === null ? 0 : (smallOrderFee ?? 0)),
    demands: refuses ? minimumOrder : 0,
  };
}
