import { PartsError } from "../problem.js";
import { leastUnits } from "./units.js";

/** How many sales units to order, and the pieces they hold. */
export type OrderQuantity = { readonly units: number; readonly pieces: number };

/**
 * How much to order of one part: what is needed and its spares, less what is at hand, in whole packs, minimums and multiples.
 *
 * @param need Pieces `needed`, `spares` as a ratio of them (rounded up to whole pieces), pieces `onHand`.
 * @param terms Pieces in a `pack`; `minimum` and `multiple` count packs.
 * @returns Nothing when enough is at hand.
 * @throws PartsError "out-of-range" when a pack, minimum or multiple is not a whole number from 1 up.
 * @example orderQuantity({ needed: 7, spares: 0.1, onHand: 2 }, { pack: 5, minimum: 1, multiple: 1 }) // { units: 2, pieces: 10 }
 */
export function orderQuantity(
  need: { readonly needed: number; readonly spares: number; readonly onHand: number },
  terms: { readonly pack: number; readonly minimum: number; readonly multiple: number },
): OrderQuantity {
  for (const count of [terms.pack, terms.minimum, terms.multiple]) {
    if (!(Number.isInteger(count) && count >= 1)) {
      throw new PartsError("out-of-range", count, "Pack, minimum and multiple are whole numbers from 1 up.");
    }
  }
  const missing = Math.ceil(need.needed * (1 + need.spares) - need.onHand - 1e-9);
  if (missing <= 0) return { units: 0, pieces: 0 };
  const units = leastUnits({ ...terms, stock: null, breaks: [[1, 0]] }, missing)!;
  return { units, pieces: units * terms.pack };
}
