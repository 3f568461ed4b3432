import type { DecimalMark } from "../../quantity/notation/number.js";

const COMMA_DECIMALS = /(?:^|[^\d.,])\d{1,3}(?:[ .']\d{3})*,(?:\d{1,2}|\d{4})(?![\d,.])|(?:^|[^\d.,])0,\d+(?![\d,])/;
const POINT_DECIMALS =
  /(?:^|[^\d.,])(?:\d{1,3}(?:[ ,']\d{3})*|\d*)\.(?:\d{1,2}|\d{4})(?![\d,.])|(?:^|[^\d.,])0?\.\d+(?![\d.])/;

/**
 * Whether a list writes 1,5 or 1.5, by what most of its cells do.
 *
 * @example decimalMarkOf(["9,80", "0,145"]) // "comma"
 */
export function decimalMarkOf(cells: Iterable<string>): DecimalMark {
  let commas = 0;
  for (const cell of cells) {
    if (COMMA_DECIMALS.test(cell)) commas++;
    if (POINT_DECIMALS.test(cell)) commas--;
  }
  return commas > 0 ? "comma" : "point";
}

/** What one count or amount looks like, groups of thousands and a decimal part included. */
export const AMOUNT: Readonly<Record<DecimalMark, string>> = {
  point: "(?:\\d{1,3}(?:[, ']\\d{3})+(?:\\.\\d+)?|\\d*\\.?\\d+)",
  comma: "(?:\\d{1,3}(?:[. ']\\d{3})+(?:,\\d+)?|\\d+(?:,\\d+)?|,\\d+)",
};

const FIRST_AMOUNT: Readonly<Record<DecimalMark, RegExp>> = {
  point: new RegExp(AMOUNT.point),
  comma: new RegExp(AMOUNT.comma),
};

/**
 * A count or amount in the list's writing as a number. Swiss and spaced thousands are read with either mark.
 *
 * @example amountOf("1 086,50", "comma") // 1086.5
 */
export function amountOf(text: string, mark: DecimalMark): number {
  const plain = text.replace(/[ ']/g, "");
  return Number(mark === "comma" ? plain.replaceAll(".", "").replace(",", ".") : plain.replaceAll(",", ""));
}

/** The first whole count in a cell, or null. @example countIn("18,969 pcs", "point") // 18969 */
export function countIn(text: string, mark: DecimalMark): number | null {
  const found = FIRST_AMOUNT[mark].exec(text);
  const count = found ? amountOf(found[0], mark) : Number.NaN;
  return Number.isInteger(count) ? count : null;
}
