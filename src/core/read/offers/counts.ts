/** How many the owner of a private list counted, and the description without the count. */
export type Counted = { readonly stock: number | null; readonly rest: string };

const ROUGH =
  /^\s*(?:abt\.?|about|approx\.?|ca\.?|circa|environ|ongeveer|etwa|some|c\.)\s*\d+\s*(?:x|×|pcs?|off|st\.?)?\s+/i;
const LEADING = /^\s*(\d{1,5})\s*(?:[x×]|pcs?\.?|off|st\.?|stk\.?|stuks?|stück|pces?|ea)\s+(?=\S)/i;
const TRAILING =
  /(?:[\s,;(]+(?:[x×]\s?(\d{1,5})|(?:qty|anzahl|aantal|qté|quantity)\.?\s*:?\s*(\d{1,5})|(\d{1,5})\s?(?:[x×]|pcs\.?|off|stk\.?|stuks)))\)?\s*$/i;

/**
 * The count that a private list writes before or behind what it counts: "4x 6800 1W", "47k 2W x5". A rough count is none.
 *
 * @example countOf("12x RC20GF225J") // { stock: 12, rest: "RC20GF225J" }
 */
export function countOf(description: string): Counted {
  if (ROUGH.test(description)) return { stock: null, rest: description.replace(ROUGH, "") };
  const leading = LEADING.exec(description);
  if (leading) return { stock: Number(leading[1]), rest: description.slice(leading[0].length) };
  const trailing = TRAILING.exec(description);
  if (!trailing) return { stock: null, rest: description };
  return { stock: Number(trailing[1] ?? trailing[2] ?? trailing[3]), rest: description.slice(0, trailing.index) };
}
