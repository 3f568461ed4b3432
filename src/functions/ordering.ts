import * as core from "../core/index.js";
import { amount, count, text } from "./ask.js";
import { type Ask, BLANK, each, rowsOf } from "./cell.js";

/**
 * What pieces cost from one offer at the cheapest, in its currency, packs and price breaks obeyed: more pieces than asked for where a break makes that cheaper.
 * @customfunction PACK_COST
 * @helpurl reference.html#PACK_COST
 * @param pieces Pieces wanted.
 * @param prices The price of one sales unit, or price breaks: text such as "0.31; 10+ 0.25", or two columns of units and prices.
 * @param pack Pieces in one sales unit: 1 when left out.
 * @param minimum The fewest units sold: 1 when left out.
 * @param multiple Units are sold in multiples of so many: 1 when left out.
 * @param stock Units there are: no limit when left out.
 * @returns Money, without shipping.
 * @example LUG.PACK_COST(9, "0.3; 10+ 0.2") -> 2
 */
export function packCost(
  pieces: unknown[][],
  prices: unknown[][],
  pack?: unknown[][],
  minimum?: unknown[][],
  multiple?: unknown[][],
  stock?: unknown[][],
): unknown[][] {
  return each(
    [count(pieces, "pieces"), pricesIn(prices), ...termsIn(pack, minimum, multiple), count(stock, "stock", null)],
    (pieces, breaks, pack, minimum, multiple, stock) =>
      purchase(pieces, { breaks, pack, minimum, multiple, stock }).cost,
  );
}

/**
 * How many sales units to order for so many pieces, spares included: packs, minimum and multiple obeyed, and rounded up to the next price break where that costs no more.
 * @customfunction ORDER_QTY
 * @helpurl reference.html#ORDER_QTY
 * @param pieces Pieces wanted.
 * @param pack Pieces in one sales unit: 1 when left out.
 * @param spares Spares on top, as a ratio of the pieces wanted: none when left out.
 * @param prices The price of one unit or price breaks, as for PACK_COST; without them no break is looked at.
 * @param minimum The fewest units sold: 1 when left out.
 * @param multiple Units are sold in multiples of so many: 1 when left out.
 * @param onHand Pieces you have already: none when left out.
 * @returns Units.
 * @example LUG.ORDER_QTY(9, 5, 10%) -> 2
 */
export function orderQty(
  pieces: unknown[][],
  pack?: unknown[][],
  spares?: unknown[][],
  prices?: unknown[][],
  minimum?: unknown[][],
  multiple?: unknown[][],
  onHand?: unknown[][],
): unknown[][] {
  const none: Breaks = [[1, 0]];
  const [packs, minimums, multiples] = termsIn(pack, minimum, multiple);
  return each(
    [
      count(pieces, "pieces"),
      packs,
      amount(spares, "spares", 0),
      pricesIn(prices, none),
      minimums,
      multiples,
      amount(onHand, "onHand", 0),
    ],
    (pieces, pack, spares, breaks, minimum, multiple, onHand) => {
      const wanted = Math.ceil(pieces * (1 + spares) - 1e-9) - onHand;
      return wanted > 0 ? purchase(wanted, { breaks, pack, minimum, multiple, stock: null }).units : 0;
    },
  );
}

type Breaks = readonly core.PriceBreak[];

function termsIn(pack: unknown, minimum: unknown, multiple: unknown) {
  return [count(pack, "pack", 1), count(minimum, "minimum", 1), count(multiple, "multiple", 1)] as const;
}

/** Price breaks: two columns of units and prices are one offer's, anything else is one cell an offer. */
function pricesIn(given: unknown, ...rest: readonly [fallback?: Breaks]): Ask<Breaks> {
  const rows = rowsOf(given);
  const isTable = rows.every((row) => row.length === 2 && row.every((cell) => typeof cell === "number"));
  if (isTable) {
    const breaks = rows.map((row) => [Number(row[0]), Number(row[1])] as const).sort(([a], [b]) => a - b);
    return { given: "", read: () => breaks };
  }
  const { read } = text(given);
  return {
    given,
    read: (cell) => {
      const prices = read(cell);
      return prices === BLANK ? (rest[0] ?? BLANK) : breaksOf(prices);
    },
  };
}

function breaksOf(cell: string): Breaks {
  const breaks = core.readPrices(cell);
  if (breaks.length > 0) return breaks;
  throw new core.PartsError("unreadable", cell, 'Write prices like 0.31 or "0.31; 10+ 0.25".', "prices");
}

function purchase(pieces: number, terms: Parameters<typeof core.cheapestUnits>[0]): core.Purchase {
  const found = core.cheapestUnits(terms, pieces);
  if (found) return found;
  throw new core.PartsError("nothing-fits", `${pieces} pieces`, "The stock is too small for so many.");
}
