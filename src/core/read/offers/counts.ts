/** How many the owner of a private list counted, and the description without the count. */
export type Counted = { readonly stock: number | null; readonly rest: string };

const ROUGH =
  /^\s*(?:abt\.?|about|approx\.?|ca\.?|circa|environ|ongeveer|etwa|some|c\.)\s*\d+\s*(?:x|×|pcs?|off|of|st\.?)?\s+/i;
const PIECES = "(?:[x×]|pcs?\\.?|off|of|ea|st\\.?|stk\\.?|stuks?|stück|pces?|[-–](?=\\s))";
const NAMED = "(?:qty|quantity|anz(?:ahl)?|aantal|qté|nr|no)\\.?\\s*:?\\s*";

/** The writings of a count: before what is counted, behind it, and set apart in between. */
const COUNTS: readonly RegExp[] = [
  new RegExp(`^\\s*(\\d{1,5})\\s*${PIECES}\\s+(?=\\S)`, "i"),
  new RegExp(`^\\s*${NAMED}(\\d{1,5})\\s+(?=\\S)`, "i"),
  new RegExp(`[\\s,;(]+(?:[x×]\\s?|${NAMED})(\\d{1,5})\\)?\\s*$`, "i"),
  /[\s,;(]+(\d{1,5})\s?(?:[x×]|pcs\.?|off|stk\.?|stuks)\)?\s*$/i,
  /\s[x×]\s?(\d{1,5})(?=\s+[a-z]{2})(?!\s*(?:[munp]f|mfd?|v)\b)/i,
];

/**
 * The count that a private list writes before or behind what it counts: "4x 6800 1W", "47k 2W x5", "5 of 100K". A rough
 * count is none.
 *
 * @example countOf("12x RC20GF225J") // { stock: 12, rest: "RC20GF225J" }
 */
export function countOf(description: string): Counted {
  if (ROUGH.test(description)) return { stock: null, rest: description.replace(ROUGH, "") };
  for (const pattern of COUNTS) {
    const found = pattern.exec(description);
    if (found) return { stock: Number(found[1]), rest: description.replace(found[0], " ").trim() };
  }
  return { stock: null, rest: description };
}
