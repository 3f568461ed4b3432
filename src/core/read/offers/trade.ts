import type { PriceBreak } from "../../offer.js";
import type { DecimalMark } from "../../quantity/notation/number.js";
import { countIn } from "./amounts.js";
import { currencyIn } from "./currency.js";
import { fold } from "./fold.js";
import { minimumSaid, multipleSaid, type SaidCount } from "./minimums.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";
import { packOfCell } from "./packs.js";
import { type PrintedPrice, pricesIn } from "./prices.js";
import type { RowTexts } from "./rowTexts.js";

/** How an offer is sold: `minimum`, `multiple` and `breaks` count sales units of `pack` pieces. */
export type Trade = {
  readonly pack: number;
  readonly minimum: number;
  readonly multiple: number;
  readonly breaks: readonly PriceBreak[];
  readonly currency: string | null;
};

/** A price for so many pieces, or for a sales unit whatever it holds. */
type Priced = { readonly from: number; readonly amount: number; readonly pieces: number | "unit" };

/** How the offer of a row is sold. @param described The pack its description speaks of, or null. */
export function tradeOf(texts: RowTexts, described: number | null, mapping: OfferMapping): Trade {
  const { mark } = mapping;
  const inColumn = packOf(texts);
  const printed = texts.of("price").flatMap(({ column, text }) => pricesOfCell(text, perUnit(column, inColumn), mark));
  const packed = inColumn ?? described;
  const pack = packed ?? (texts.of("price").some(({ column }) => column.per) ? null : packOfPrices(printed)) ?? 1;
  const per = pricePieces(texts.first("price unit"), mark);
  const breaks = printed.map((price) => breakOf(price, pack, packed !== null, per));
  const quantities = minimumOf(texts, mark, pack);
  const ownCurrency = currencyIn(texts.joined("currency")) ?? currencyIn(texts.joined("price"));
  return { pack, ...quantities, breaks: inOrder(breaks), currency: ownCurrency ?? mapping.currency };
}

/** "Per piece" in a head is the piece of a pack only where the list has a column of packs; else it is what the row sells. */
const perUnit = (column: OfferColumn, pack: number | null): OfferColumn =>
  column.per === 1 && pack === null ? { ...column, per: null } : column;

function packOf(texts: RowTexts): number | null {
  return (
    texts
      .of("pack")
      .map(({ text }) => packOfCell(text))
      .find((pack) => pack !== null && pack > 1) ?? null
  );
}

function pricesOfCell(text: string, { from, per }: OfferColumn, mark: DecimalMark): Priced[] {
  const prices = pricesIn(text, mark);
  if (from === null && per === null) return prices.map(asPriced);
  return prices.slice(0, 1).map(({ amount }) => ({ from: from ?? 1, amount, pieces: per ?? "unit" }));
}

const asPriced = ({ from, amount, for: pieces }: PrintedPrice): Priced => ({
  from,
  amount,
  pieces: pieces > 1 ? pieces : "unit",
});

/** A price for several with none for one is a pack: 3/$1.00. Columns for ten and for a hundred are no packs. */
function packOfPrices(printed: readonly Priced[]): number | null {
  const [first] = printed;
  return first && first.from > 1 && first.pieces === first.from ? first.from : null;
}

/** The pieces that a column of price units says: 100; for a bag or a box it is whatever the sales unit holds. */
function pricePieces(text: string | null, mark: DecimalMark): number | "unit" | null {
  if (text === null) return null;
  const words = fold(text);
  const count = countIn(words, mark);
  if (count !== null) return count;
  if (/^(c|cent|honderd|hundert|hundred)\b/.test(words)) return 100;
  if (/^(m|mille|duizend|tausend|thousand)\b/.test(words)) return 1000;
  return /^(pce|pc|piece|st|stk|stuk|stuck|ea|each|unit[e]?|p)\b/.test(words) ? 1 : "unit";
}

function breakOf(price: Priced, pack: number, isPacked: boolean, per: number | "unit" | null): PriceBreak {
  const pieces = price.pieces === "unit" ? (per ?? "unit") : price.pieces;
  const each = pieces === "unit" ? price.amount : (price.amount / pieces) * pack;
  const isWholePack = !isPacked && price.from === pack && pack > 1;
  const from =
    isWholePack || (isPacked && price.pieces !== "unit" && price.pieces > 1 && price.from === pack) ? 1 : price.from;
  return [from, Number(each.toPrecision(12))];
}

/** Breaks by rising quantity, each once. */
function inOrder(breaks: readonly PriceBreak[]): PriceBreak[] {
  const sorted = [...breaks].sort((a, b) => a[0] - b[0]);
  return sorted.filter(([from], i) => from !== sorted[i - 1]?.[0]);
}

/** "par 10", "multiples of 10" is a minimum and a multiple; a bare number a minimum. Without a column for them a note may tell. */
function minimumOf(texts: RowTexts, mark: DecimalMark, pack: number): { minimum: number; multiple: number } {
  const minimumText = texts.first("minimum");
  const minimum = minimumText === null ? null : countIn(minimumText, mark);
  const stepped = minimumText !== null && /\b(par|per|pro|je|multipl\w*|steps?|veelvoud)\b/.test(fold(minimumText));
  const multiple = countIn(texts.joined("multiple"), mark) ?? (stepped ? minimum : null);
  const notes = texts.joined("note", "pack", "stock", "status", "description");
  const inUnits = (count: SaidCount | null) =>
    count && (count.of === "units" ? count.count : Math.ceil(count.count / pack));
  const step = multiple ?? inUnits(multipleSaid(notes));
  return { minimum: minimum ?? inUnits(minimumSaid(notes)) ?? step ?? 1, multiple: step ?? 1 };
}
