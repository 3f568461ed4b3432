import type { Basket, BasketLine, BasketOffer, Vendor } from "../../../src/core/index.js";

/** An invented vendor: 4.00 shipping, no thresholds. */
export const vendorOf = (id: string, differs: Partial<Vendor> = {}): Vendor => ({
  id,
  shipping: 4,
  freeFrom: null,
  minimumOrder: null,
  smallOrderFee: null,
  rate: 1,
  ...differs,
});

/** An offer of single pieces at one price; its vendor stands before the dash of its id. */
export const offerOf = (id: string, price: number, differs: Partial<BasketOffer> = {}): BasketOffer => ({
  id,
  vendor: id.split("-")[0]!,
  pack: 1,
  minimum: 1,
  multiple: 1,
  stock: null,
  breaks: [[1, price]],
  ...differs,
});

/** A line that wants pieces of any of some offers. */
export const lineOf = (id: string, pieces: number, fits: readonly string[], single = false): BasketLine => ({
  id,
  pieces,
  fits,
  single,
});

/** A basket without a cap on vendors. */
export const basketOf = (
  vendors: readonly Vendor[],
  offers: readonly BasketOffer[],
  lines: readonly BasketLine[],
  options: Partial<Basket["options"]> = {},
): Basket => ({ vendors, offers, lines, options: { maxVendors: null, excluded: [], ...options } });
