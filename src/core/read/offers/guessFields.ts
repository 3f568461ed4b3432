import type { ColumnField } from "./columnWords.js";
import { saysNothing } from "./fold.js";
import type { OfferColumn } from "./offerColumn.js";

/** A column of shorter cells (the drawer, a mark) says nothing of the part. */
const SHORT = 3;

/** What the cells of one column look like: shares of those that say something. */
type Look = {
  readonly index: number;
  readonly filled: number;
  readonly length: number;
  readonly distinct: number;
  readonly money: number;
  readonly counts: number;
  readonly codes: number;
  readonly quantities: number;
};

const MONEY = /^(?:[€$£]|chf|eur|usd)?\s?\d*[.,]\d{2,4}\s?(?:[€$£¢]|chf|eur|usd|ea\.?|each)?$|[€$£¢]\s?\d|\d\s?[€$£¢]/i;
const CODE = /^(?=\S*\d)[\p{L}\d][\p{L}\d./_-]{1,24}$/u;
/** A figure with the unit or the form of a rating. */
export const QUANTITY =
  /\d\s?(?:w|v|ohms?|Ω|k|m|meg|[munpµ]f|mfd|mmf|%|watts?|volts?|ma|hy?)\b|\d[kmnp]\d|\d\s?%|\.\d+\s?\/\s?\d|½|¼/i;

/**
 * What each column of a list without heads holds, by what stands in it.
 *
 * The longest column with quantities describes; codes that each stand once are vendor's numbers; money is the price,
 * whole numbers beside a price the stock; other words are remarks.
 */
export function guessFields(body: readonly (readonly string[])[]): OfferColumn[] {
  const width = body.reduce((most, row) => Math.max(most, row.length), 0);
  const looks = Array.from({ length: width }, (_, index) => lookOf(body, index));
  const description = bestOf(looks, (look) => look.quantities * look.length * look.filled);
  const price = bestOf(looks, (look) => (look.money > 0.6 ? look.money * look.filled : 0), [description]);
  const number = bestOf(looks, (look) => (look.codes > 0.7 && look.distinct > 0.9 ? look.filled : 0), [
    description,
    price,
  ]);
  const stock = bestOf(looks, (look) => (look.counts > 0.8 ? look.filled : 0), [description, price, number]);
  const fields = new Map<number | null, ColumnField>([
    [stock, "stock"],
    [number, "stock number"],
    [price, "price"],
    [description, "description"],
  ]);
  return looks.map(({ index, codes, filled, length }) => {
    const field = fields.get(index) ?? (filled > 0 && codes < 0.7 && length > SHORT ? "note" : "nothing");
    return { index, head: "", field, from: null, per: null, unit: null };
  });
}

function lookOf(body: readonly (readonly string[])[], index: number): Look {
  const cells = body.map((row) => row[index] ?? "").filter((cell) => !saysNothing(cell));
  const share = (pattern: RegExp) =>
    cells.length ? cells.filter((cell) => pattern.test(cell)).length / cells.length : 0;
  return {
    index,
    filled: cells.length,
    length: cells.length ? cells.reduce((sum, cell) => sum + cell.length, 0) / cells.length : 0,
    distinct: cells.length ? new Set(cells).size / cells.length : 0,
    money: share(MONEY),
    counts: share(/^\d{1,6}$/),
    codes: share(CODE),
    quantities: share(QUANTITY),
  };
}

/** The column with the highest score above nothing, or null. */
function bestOf(
  looks: readonly Look[],
  score: (look: Look) => number,
  taken: readonly (number | null)[] = [],
): number | null {
  const free = looks.filter((look) => !taken.includes(look.index) && score(look) > 0);
  return free.sort((a, b) => score(b) - score(a))[0]?.index ?? null;
}
