import type { DecimalMark } from "../../quantity/notation/number.js";
import { AMOUNT, amountOf } from "./amounts.js";
import { fold } from "./fold.js";
import { remembering } from "./remember.js";

/**
 * A price as printed: from how many on it holds, the amount, and for how many pieces the amount is.
 *
 * "10/$8.00" is from 10, 8.00 for 10; "25+ 0.40" is from 25, 0.40 for 1.
 */
export type PrintedPrice = { readonly from: number; readonly amount: number; readonly for: number };

const SIGN = "(?:[€$£¥]|c?a?u?s?\\$|chf|eur(?:os?)?|usd|gbp|sfr)";
const FOR = "(?:/|for|pour|voor|fur|@)";
const UPWARDS = "(?:\\+|or more|and up|up|et plus|ou plus|en meer|of meer|und mehr|oder mehr)";
const FROM = "(?:ab|from|vanaf|a partir de|des)";
const CENTS = "(?:¢|cents?|cts?|centimes|(?<=\\d)[cp](?![\\w.]))";
const SMALL_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\btwo\b|\bdeux\b|\btwee\b|\bzwei\b/g, "2"],
  [/\bthree\b|\btrois\b|\bdrie\b|\bdrei\b/g, "3"],
  [/\bfour\b|\bquatre\b|\bvier\b/g, "4"],
  [/\bfive\b|\bcinq\b|\bvijf\b|\bfunf\b/g, "5"],
  [/\bten\b|\bdix\b|\btien\b|\bzehn\b/g, "10"],
  [/\b(a|per|the) dozen\b|\bdozen\b/g, "12"],
];

/** A text with small counts in words written in figures. @example countsInFigures("five for") // "5 for" */
export function countsInFigures(text: string): string {
  if (!/[a-z]{3}/.test(text)) return text;
  return SMALL_WORDS.reduce((plain, [word, figures]) => plain.replace(word, figures), text);
}

/**
 * The prices that a cell prints, in the order they stand; cents come as parts of the list's unit. A cell without any
 * ("call", "sold out") gives none.
 *
 * @example pricesIn("$0.60 ea, 10 for $5.00", "point") // [{ from: 1, amount: 0.6, for: 1 }, { from: 10, amount: 5, for: 10 }]
 */
export const pricesIn = (cell: string, mark: DecimalMark): readonly PrintedPrice[] => PRICES_IN[mark](cell);

const PRICES_IN: Readonly<Record<DecimalMark, (cell: string) => readonly PrintedPrice[]>> = {
  point: remembering((cell) => pricesOf(cell, "point")),
  comma: remembering((cell) => pricesOf(cell, "comma")),
};

function pricesOf(cell: string, mark: DecimalMark): PrintedPrice[] {
  const text = countsInFigures(fold(cell));
  const prices: PrintedPrice[] = [];
  for (const { groups } of text.matchAll(PRICE[mark])) {
    const figure = amountOf(groups!.amount!, mark) / (groups!.cents ? 100 : 1);
    const from = Number(groups!.lot ?? groups!.least ?? groups!.least2 ?? groups!.per ?? 1);
    const lot = Number(groups!.lot ?? groups!.per ?? 1);
    if (figure > 0 && from > 0 && lot > 0) prices.push({ from, amount: Number(figure.toPrecision(12)), for: lot });
  }
  return prices;
}

/** A price with the count before it ("10 for", "25+", "ab 10") or the pieces behind it ("/100"). */
const priceIn = (amount: string) =>
  new RegExp(
    `(?:(?<![\\d.,])(?<lot>\\d+)\\s*${FOR}\\s*|(?<![\\d.,])(?<least>\\d+)\\s*${UPWARDS}\\s*[:=@]?\\s*|${FROM}\\s*(?<least2>\\d+)[^\\d€$£]*)?` +
      `(?:${SIGN}\\s*)?(?<amount>${amount})\\s*(?<cents>${CENTS})?(?:${SIGN})?(?:\\s*(?:/|per|pro|je|pour|voor)\\s*(?<per>\\d+)(?![\\d.,]))?`,
    "g",
  );
const PRICE: Readonly<Record<DecimalMark, RegExp>> = { point: priceIn(AMOUNT.point), comma: priceIn(AMOUNT.comma) };
