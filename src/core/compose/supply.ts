import { SLACK } from "./meets.js";
import { numbersOf, type StockPart } from "./stock.js";
import type { Wants } from "./wants.js";

/** What each part costs and how many of it there are, by its place, and what may be spent; infinite where unlimited. */
export type Supply = { readonly prices: Float64Array; readonly pieces: Float64Array; readonly mostPrice: number };

/** The supply of a stock: an unknown price is beyond any that is asked, an unknown number of pieces is enough. */
export function supplyOf(parts: readonly StockPart[], { mostPrice }: Wants): Supply {
  return {
    prices: numbersOf(parts, ({ price }) => price ?? Number.POSITIVE_INFINITY),
    pieces: numbersOf(parts, ({ pieces }) => pieces ?? Number.POSITIVE_INFINITY),
    mostPrice: mostPrice == null ? Number.POSITIVE_INFINITY : mostPrice * (1 + SLACK),
  };
}

/** What the parts at these places cost together; infinite where a price is unknown. */
export function priceOf({ prices }: Supply, places: readonly number[]): number {
  let price = 0;
  for (const place of places) price += prices[place]!;
  return price;
}

/** Whether as many pieces as the places need are at hand, and what they cost may be spent. */
export function areToBeHad(supply: Supply, places: readonly number[]): boolean {
  if (priceOf(supply, places) > supply.mostPrice) return false;
  for (const place of places) {
    const pieces = supply.pieces[place]!;
    if (pieces >= places.length) continue;
    let needed = 0;
    for (const other of places) if (other === place) needed++;
    if (needed > pieces) return false;
  }
  return true;
}
