/** TABLE: the sheets of buying: Offers, On hand, Vendors, Currencies, Order. */
import { STATUSES } from "../../offer.js";
import { amount, number, text, word, yes } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import {
  IN_MILLIMETRES,
  IN_VOLTS,
  IN_WATTS,
  MILLIMETRES,
  MONEY,
  PIECES,
  PRICE,
  SIZE,
  VOLTS,
  WATTS,
} from "./formats.js";

const printed = { tint: "printed" } as const;
const worked = { tint: "worked" } as const;
const yours = { tint: "yours" } as const;

/** One vendor's line, or a line of your own drawers. */
const OFFER = {
  vendor: text("vendor", { ...printed, width: 130 }),
  stockNumber: text("stock number", { ...printed, width: 110 }),
  description: text("description", { ...printed, width: 260 }),
  kind: text("kind", { ...worked, width: 80 }),
  value: text("value", { ...worked, width: 90 }),
  size: number("size", SIZE, { ...worked, width: 112 }),
  range: text("range", { ...worked, width: 90 }),
  tolerance: text("tolerance", { ...worked, width: 84 }),
  watts: amount("watts", WATTS, IN_WATTS, worked),
  volts: amount("volts", VOLTS, IN_VOLTS, worked),
  voltsKind: word("ac or dc", ["ac", "dc"], { ...worked, width: 60 }),
  technology: text("technology", { ...worked, width: 150 }),
  safetyClass: text("safety class", { ...worked, width: 80 }),
  temperatureCoefficient: text("temperature code", { ...worked, width: 90 }),
  taper: text("taper", { ...worked, width: 70 }),
  withSwitch: yes("switch", worked),
  sections: text("sections", { ...worked, width: 120 }),
  length: amount("length", MILLIMETRES, IN_MILLIMETRES, worked),
  diameter: amount("diameter", MILLIMETRES, IN_MILLIMETRES, worked),
  newOldStock: yes("old stock", { ...worked, width: 76 }),
  measured: number("measured", SIZE, { ...worked, width: 112 }),
  pack: number("pack", PIECES, { ...worked, width: 56 }),
  minimum: number("minimum", PIECES, { ...worked, width: 70 }),
  multiple: number("multiple", PIECES, { ...worked, width: 70 }),
  stock: number("stock", PIECES, { ...worked, width: 60 }),
  prices: text("prices", { ...worked, width: 190 }),
  currency: text("currency", { ...worked, width: 70 }),
  status: word("status", STATUSES, { ...worked, width: 100 }),
  row: number("list row", PIECES, { ...printed, width: 60 }),
  unclear: text("unclear", { ...worked, width: 200 }),
} as const;

/** Offers: the vendors' lines in play. */
export const OFFERS_SHEET = sheet("Offers", 3, {
  ...OFFER,
  change: text("since last list", { ...worked, width: 120 }),
});
export type OffersRow = RowOf<typeof OFFERS_SHEET>;

/** On hand: your own drawers, a vendor whose price is nothing. */
export const ON_HAND_SHEET = sheet("On hand", 3, OFFER);
export type OnHandRow = RowOf<typeof ON_HAND_SHEET>;

/** Vendors: terms, the date of the list, and how its columns were understood. */
export const VENDORS_SHEET = sheet("Vendors", 1, {
  vendor: text("vendor", { ...yours, width: 140 }),
  listDate: text("list of", { ...yours, width: 90 }),
  currency: text("currency", { ...yours, width: 70 }),
  shipping: number("shipping", MONEY, yours),
  freeFrom: number("free from", MONEY, yours),
  minimumOrder: number("minimum order", MONEY, { ...yours, width: 90 }),
  smallOrderFee: number("small-order fee", MONEY, { ...yours, width: 90 }),
  leaveOut: yes("leave out", { ...yours, width: 70 }),
  offers: number("offers", PIECES, { ...worked, width: 60 }),
  refused: number("refused rows", PIECES, { ...worked, width: 80 }),
  columns: text("columns understood as", { ...yours, width: 320 }),
});
export type VendorsRow = RowOf<typeof VENDORS_SHEET>;

/** Currencies: what one unit of each is worth in yours, whose own rate is 1. */
export const CURRENCIES_SHEET = sheet("Currencies", 1, {
  currency: text("currency", { ...yours, width: 80 }),
  rate: number("rate", PRICE, { ...yours, width: 80 }),
  asOf: text("rate of", { ...yours, width: 100 }),
});
export type CurrenciesRow = RowOf<typeof CURRENCIES_SHEET>;

/** What can have become of an ordered line. */
export const ORDER_STATES = ["to order", "on the way", "came", "short", "sent another"] as const;

/** Order: what to buy where, for whom, and why there. */
export const ORDER_SHEET = sheet("Order", 2, {
  vendor: text("vendor", { ...worked, width: 130 }),
  stockNumber: text("stock number", { ...worked, width: 110 }),
  description: text("description", { ...worked, width: 260 }),
  wanted: number("pieces wanted", PIECES, { ...worked, width: 80 }),
  units: number("units", PIECES, { ...worked, width: 60 }),
  pack: number("pack", PIECES, { ...worked, width: 56 }),
  price: number("price", PRICE, worked),
  cost: number("cost", MONEY, worked),
  currency: text("currency", { ...worked, width: 70 }),
  forWhom: text("for", { ...worked, width: 260 }),
  spares: number("spares", PIECES, { ...worked, width: 64 }),
  why: text("why here", { ...worked, width: 320 }),
  state: word("state", ORDER_STATES, { ...yours, width: 100 }),
  came: number("came", PIECES, { ...yours, width: 60 }),
  stocked: number("put in stock", PIECES, { ...worked, width: 76 }),
  remark: text("remark", { ...yours, width: 160 }),
});
export type OrderRow = RowOf<typeof ORDER_SHEET>;
