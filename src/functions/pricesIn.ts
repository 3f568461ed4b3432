import { PartsError, type PriceBreak, readPrices } from "../core/index.js";
import { amount, count } from "./ask.js";
import { type Ask, BLANK, rowsOf } from "./cell.js";

/**
 * The price breaks that a range of a sheet holds: one price, the breaks of an offer in one text (`0.31; 10+ 0.25`), or in
 * each row from how many packs on and the price of one.
 *
 * @throws PartsError when a cell can't be read, or no price stands there
 */
export function pricesIn(range: unknown): readonly PriceBreak[] {
  const breaks = rowsOf(range).flatMap((row): readonly PriceBreak[] => {
    if (row.length === 1 && typeof row[0] === "string" && row[0].trim() !== "") return inText(row[0]);
    const cells = row.length > 1 ? row : [1, row[0] ?? null];
    const from = value(count(null, "from"), cells[0] ?? null);
    const price = value(amount(null, "price"), cells[1] ?? null);
    return from === null || price === null ? [] : [[from, price]];
  });
  if (breaks.length === 0)
    throw new PartsError("not-a-list", "the prices given", "Give a price, or two columns: from, price.");
  return [...breaks].sort(([a], [b]) => a - b);
}

function inText(text: string): readonly PriceBreak[] {
  const breaks = readPrices(text);
  if (breaks.length > 0) return breaks;
  throw new PartsError("unreadable", text, "Write prices like 0.31, or 0.31; 10+ 0.25.", "prices");
}

function value<T>(ask: Ask<T>, cell: Parameters<Ask<T>["read"]>[0]): T | null {
  const read = ask.read(cell);
  return read === BLANK ? null : read;
}
