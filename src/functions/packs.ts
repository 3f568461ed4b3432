import * as core from "../core/index.js";
import { amount, count, measured } from "./ask.js";
import { spill } from "./cell.js";
import { pricesIn } from "./pricesIn.js";

/**
 * How many packs and pieces to order: what is needed with its spares, less what is at hand.
 * @customfunction ORDER_QTY
 * @helpurl reference.html#ORDER_QTY
 * @param needed Pieces needed.
 * @param onHand Pieces at hand: 0 when left out.
 * @param spares Pieces more to have, as a ratio: 0% when left out.
 * @param pack Pieces in one pack: 1 when left out.
 * @param minimum Fewest packs that are sold: 1 when left out.
 * @param multiple Packs are sold in multiples of this: 1 when left out.
 * @returns Packs, and the pieces that they hold.
 * @example LUG.ORDER_QTY(7, 2, 10%, 5) -> {2, 10}
 */
export function orderQty(
  needed: unknown[][],
  onHand?: unknown[][],
  spares?: unknown[][],
  pack?: unknown[][],
  minimum?: unknown[][],
  multiple?: unknown[][],
): unknown[][] {
  return spill(
    [
      amount(needed, "needed"),
      amount(onHand, "onHand", 0),
      measured(spares, "spares", "ratio", 0),
      count(pack, "pack", 1),
      count(minimum, "minimum", 1),
      count(multiple, "multiple", 1),
    ],
    (needed, onHand, spares, pack, minimum, multiple) => {
      const { units, pieces } = core.orderQuantity({ needed, spares, onHand }, { pack, minimum, multiple });
      return [[units, pieces]];
    },
  );
}

/**
 * The cheapest way to get so many pieces from one offer, in its currency: more than asked for where a price break makes that cheaper.
 * @customfunction PACK_COST
 * @helpurl reference.html#PACK_COST
 * @param pieces Pieces wanted.
 * @param prices The price of one pack; the breaks of an offer as text, such as 0.31; 10+ 0.25; or a range of two columns: from how many packs on, and the price of one then.
 * @param pack Pieces in one pack: 1 when left out.
 * @param minimum Fewest packs that are sold: 1 when left out.
 * @param multiple Packs are sold in multiples of this: 1 when left out.
 * @param stock Packs there are: as many as wanted when left out.
 * @returns What they cost, the packs to buy, and the pieces that they hold.
 * @example LUG.PACK_COST(8, {1, 0.3; 10, 0.2}) -> {2, 10, 10}
 */
export function packCost(
  pieces: unknown[][],
  prices: unknown[][],
  pack?: unknown[][],
  minimum?: unknown[][],
  multiple?: unknown[][],
  stock?: unknown[][],
): unknown[][] {
  return spill(
    [
      count(pieces, "pieces"),
      count(pack, "pack", 1),
      count(minimum, "minimum", 1),
      count(multiple, "multiple", 1),
      amount(stock, "stock", null),
    ],
    (pieces, pack, minimum, multiple, stock) => {
      const found = core.cheapestUnits({ pack, minimum, multiple, stock, breaks: pricesIn(prices) }, pieces);
      if (!found) throw new core.PartsError("nothing-fits", `${pieces} pieces`, "The stock is too small for so many.");
      return [[found.cost, found.units, found.units * pack]];
    },
  );
}
