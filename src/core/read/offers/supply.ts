import type { Status } from "../../offer.js";
import type { DecimalMark } from "../../quantity/notation/number.js";
import { countIn } from "./amounts.js";
import { fold } from "./fold.js";
import { countsInFigures } from "./prices.js";
import { remembering, shapeOf } from "./remember.js";
import { PLAIN_SUPPLY, STATUS_WORDS } from "./statusWords.js";

/** The texts of a row that may speak of its supply. */
export type SupplyTexts = {
  readonly status: readonly string[];
  readonly stock: readonly string[];
  readonly description: string;
};

/** Whether an offer can be had, and how many sales units there are; null where no count is stated. */
export type Supply = { readonly status: Status; readonly stock: number | null };

const OUTRANKING: readonly Status[] = ["discontinued", "last-time-buy", "out-of-stock", "in-stock"];

/**
 * Whether an offer can be had, from status, stock, note and price of its row.
 *
 * Words on the end of a part outrank its stock; a stock of nothing, or a lead time in its place, is out of stock. What
 * is not said is in stock.
 *
 * @example supplyOf({ status: [], stock: ["laatste stuks (18)"], description: "" }, "comma") // last-time-buy, 18
 */
export function supplyOf(texts: SupplyTexts, mark: DecimalMark): Supply {
  const said = [...texts.status, ...texts.stock].map(statusIn).filter((status) => status !== null);
  const plain = plainSupply(shapeOf(texts.description)).phrase;
  if (plain) said.push(statusIn(plain) ?? "in-stock");
  const counts = texts.stock.map((text) => stockIn(text, mark)).concat(texts.status.map(countLeft));
  const stock = counts.find((count) => count !== null) ?? null;
  if (stock === 0) said.push("out-of-stock");
  return { status: OUTRANKING.find((status) => said.includes(status)) ?? "in-stock", stock };
}

/** What a text says of the supply, or null. */
export function statusIn(text: string): Status | null {
  return statusOfShape(shapeOf(text)).status;
}

const plainSupply = remembering((shape) => ({ phrase: PLAIN_SUPPLY.exec(fold(shape))?.[0] }));

const statusOfShape = remembering((shape) => {
  const words = fold(shape);
  return { status: STATUS_WORDS.find(([, phrase]) => phrase.test(words))?.[0] ?? null };
});

/** The count of a stock cell: bare, or in words that speak of stock; the figures of a lead time are none. */
function stockIn(text: string, mark: DecimalMark): number | null {
  const words = fold(text);
  if (/^0\b(?![.,]\d)/.test(words)) return 0;
  const bracketed = /\((\d[\d.,' ]*)[^)]*\)/.exec(words)?.[1];
  if (bracketed) return countIn(bracketed, mark);
  if (/week|wk|sem|jour|day|tag|dag|woche|month|mois|maand|monat|\bkw\b|delai|zeit/.test(words)) return null;
  return countLeft(text) ?? (/^\D{0,14}\d/.test(words) ? countIn(words.replace(/^[^\d]+/, ""), mark) : null);
}

/** "one left", "last two", "only 3 left", "noch 4 Stück". */
function countLeft(text: string): number | null {
  const words = countsInFigures(fold(text).replace(/\bone\b|\bune?\b|\bein\b|\been\b/g, "1"));
  const found =
    /(?:last|only|nur|noch|nog|encore|dernieres?|letzten?|laatste)\s+(\d+)\b(?!\s*(?:week|sem|woch|day|tag))|\b(\d+)\s+(?:only\s+)?(?:left|remaining|restants?|ubrig)/.exec(
      words,
    );
  return found ? Number(found[1] ?? found[2]) : null;
}
