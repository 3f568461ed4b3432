/**
 * A vendor's terms. `rate` turns the vendor's currency into the user's; null means there is no such term. `currency` is
 * the code that sums in the vendor's money are shown with, where one is known.
 */
export type Vendor = {
  readonly id: string;
  readonly shipping: number;
  readonly freeFrom: number | null;
  readonly minimumOrder: number | null;
  readonly smallOrderFee: number | null;
  readonly rate: number;
  readonly currency?: string | null;
};

/** What an order needs to know of an offer: `breaks`, `minimum`, `multiple` and `stock` count units of `pack` pieces. */
export type BasketOffer = {
  readonly id: string;
  readonly vendor: string;
  readonly pack: number;
  readonly minimum: number;
  readonly multiple: number;
  readonly stock: number | null;
  readonly breaks: readonly (readonly [from: number, price: number])[];
};

/** One want: so many pieces, from any of the offers that fit; `single` means all from one offer, for parts that must be alike. */
export type BasketLine = {
  readonly id: string;
  readonly pieces: number;
  readonly fits: readonly string[];
  readonly single: boolean;
};

/** The whole ordering problem. `currency` is the user's, which costs are shown with where it is known. */
export type Basket = {
  readonly vendors: readonly Vendor[];
  readonly offers: readonly BasketOffer[];
  readonly lines: readonly BasketLine[];
  readonly options: { readonly maxVendors: number | null; readonly excluded: readonly string[] };
  readonly currency?: string | null;
};

/**
 * What to buy where, and why. No plan can cost less than `bound`; cost and bound are in the user's currency.
 */
export type Plan = {
  readonly cost: number;
  readonly bound: number;
  readonly orders: readonly { readonly offer: string; readonly units: number }[];
  readonly supplies: readonly { readonly offer: string; readonly line: string; readonly pieces: number }[];
};

/** Why no plan exists, one sentence for each line or vendor that stands in the way. */
export type Infeasible = { readonly infeasible: true; readonly because: readonly string[] };
