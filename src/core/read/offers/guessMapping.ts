import { unitNamed } from "../../quantity/notation/units.js";
import type { SourceLine } from "../sourceLine.js";
import { decimalMarkOf } from "./amounts.js";
import { COLUMN_WORDS, type ColumnField } from "./columnWords.js";
import { currencyOf } from "./currency.js";
import { cleanCell, fold, saysNothing } from "./fold.js";
import { guessFields, QUANTITY } from "./guessFields.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";
import { packIn } from "./packs.js";
import { isNewOldStock } from "./remarks.js";
import { statusIn } from "./supply.js";

const HEAD_WITHIN_LINES = 40;
const LONGEST_HEAD = 45;

/** The cells of a line as a person reads them; a line without columns is one cell. */
export const cellsOf = (line: SourceLine): string[] => (line.cells ?? [line.text]).map(cleanCell);

/**
 * How a vendor's list is laid out, by the words of its heads, and by what stands below them where there are none.
 *
 * @example guessMapping(lines).columns[3]?.field // "price"
 */
export function guessMapping(lines: readonly SourceLine[]): OfferMapping {
  const head = headLineOf(lines);
  const headLine = head?.number ?? null;
  const body = lines.filter((line) => line.number > (headLine ?? 0)).map(cellsOf);
  const columns = head ? columnsOfHeads(headsOf(head, lines), body) : guessFields(body);
  const mark = decimalMarkOf(cellsToJudge(columns, body));
  const priced = columns.filter((column) => column.field === "price" || column.field === "currency");
  const prices = body.flatMap((row) => priced.map((column) => row[column.index] ?? ""));
  const above = lines
    .filter((line) => headLine !== null && line.number <= headLine)
    .map((line) => cleanCell(line.text));
  return { headLine, mark, currency: currencyOf([...prices, ...above]), columns };
}

/** Prices tell 1,5 from 1.5 best: descriptions and counts have commas of their own. */
function cellsToJudge(columns: readonly OfferColumn[], body: readonly (readonly string[])[]): string[] {
  const prices = columns.filter((column) => column.field === "price");
  const judged = prices.length > 0 ? prices : columns.filter((column) => column.field === "description");
  return body.flatMap((row) => judged.map((column) => row[column.index] ?? ""));
}

/** The line of heads: most of its cells are words for columns, none holds a quantity. */
function headLineOf(lines: readonly SourceLine[]): SourceLine | null {
  let best: { line: SourceLine; found: number } | null = null;
  for (const line of lines.slice(0, HEAD_WITHIN_LINES)) {
    const cells = cellsOf(line).filter((cell) => !saysNothing(cell));
    const fields = cells.map(fieldOfHead).filter((field) => field !== null);
    const worded = cells.filter((cell) => fieldOfHead(cell) !== null && /\p{L}{2}/u.test(cell));
    const isHead = worded.length >= 2 && fields.length * 2 >= cells.length;
    if (isHead && fields.length > (best?.found ?? 0)) best = { line, found: fields.length };
  }
  return best?.line ?? null;
}

/**
 * The heads of a list, with what a row of group heads right above them adds: a head where the lower row has none, and what
 * the prices below a group's head are for. A group's head stands over its first column.
 */
function headsOf(head: SourceLine, lines: readonly SourceLine[]): readonly string[] {
  const lower = cellsOf(head);
  const above = lines.find(({ number }) => number === head.number - 1);
  const upper = above ? cellsOf(above) : [];
  const named = upper.filter((cell) => cell !== "" && cell.length <= LONGEST_HEAD);
  if (named.length < 2 || named.length !== upper.filter((cell) => cell !== "").length) return lower;
  let group = "";
  return Array.from({ length: Math.max(lower.length, upper.length) }, (_, i) => {
    const [own, over] = [lower[i] ?? "", upper[i] ?? ""];
    if (over !== "") group = over;
    if (own === "") return over;
    return fieldOfHead(own) === "price" && fieldOfHead(group) === "price" ? `${group} ${own}` : own;
  });
}

/** What a head says stands below it, or null for words that are no head. */
export function fieldOfHead(head: string): ColumnField | null {
  const words = fold(head);
  if (words.length > LONGEST_HEAD) return null;
  const found = COLUMN_WORDS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
  return found !== "price" &&
    /\d\s?[a-zµΩ]/i.test(words.replace(/\(.*?\)/g, "")) &&
    !/price|preis|prijs|prix/.test(words)
    ? null
    : found;
}

function columnsOfHeads(heads: readonly string[], body: readonly (readonly string[])[]): OfferColumn[] {
  const columns = heads.map((head, index) => columnOfHead(head, index));
  const guessed = guessFields(body);
  const isTaken = (field: ColumnField) => columns.some((column) => column.field === field);
  const several = columns.filter((column) => column.field === "description");
  const code = guessed.find((column) => column.field === "stock number");
  const filled = columns.map((column) => {
    if (several.length > 1 && !isTaken("stock number") && column.index === code?.index) {
      return { ...column, field: "stock number" as const };
    }
    const field = guessed[column.index]?.field ?? "nothing";
    if (fieldOfHead(column.head) !== null || !GUESSED_BELOW.includes(field)) return column;
    return isTaken(field) ? column : { ...column, field };
  });
  const known = filled.map((column) => byContents(withValueUnit(column, body), body));
  return oneStockNumber(withSteps(withSomePrice(known)));
}

/** What a column with an unknown head, or none, may be taken for by its cells, where no other column is. */
const GUESSED_BELOW: readonly ColumnField[] = ["description", "price", "stock number"];

/**
 * A column whose head says too little by what stands in it: packs ("pack of 10", "single"), words on the supply or on old
 * stock; and a column of bodies or materials in which ratings stand is read like a description.
 */
function byContents(column: OfferColumn, body: readonly (readonly string[])[]): OfferColumn {
  const isUnknown = column.field === "nothing" && fieldOfHead(column.head) === null;
  if (!isUnknown && column.field !== "body" && column.field !== "technology") return column;
  const cells = body.map((row) => row[column.index] ?? "").filter((cell) => !saysNothing(cell));
  const share = (fits: (cell: string) => boolean) => cells.filter(fits).length / Math.max(1, cells.length);
  if (!isUnknown) return share((cell) => QUANTITY.test(cell)) > 0.5 ? { ...column, field: "description" } : column;
  const isPack = (cell: string) => packIn(cell).pack !== null || SINGLE.test(fold(cell));
  if (share(isPack) >= 0.8) return { ...column, field: "pack" };
  const speaks = (cell: string) => statusIn(cell) !== null || isNewOldStock(cell);
  return share(speaks) >= 0.15 ? { ...column, field: "note" } : column;
}

const SINGLE = /^(singles?|each|loose|single piece|einzeln|lose|stuck|stk\.?|los|per stuk|a l'unite|piece|pce|1)$/;

/** Prices for ten and for a hundred are breaks from ten and from a hundred on, where a list has more than one price. */
function withSteps(columns: readonly OfferColumn[]): readonly OfferColumn[] {
  const prices = columns.filter(({ field }) => field === "price");
  if (prices.length < 2) return columns;
  return columns.map((column) =>
    column.field === "price" && (column.per ?? 1) > 1 ? { ...column, from: column.per } : column,
  );
}

/** "Unit" heads the unit of a price or of a value: the cells tell. */
function withValueUnit(column: OfferColumn, body: readonly (readonly string[])[]): OfferColumn {
  if (column.field !== "price unit") return column;
  const cells = body.map((row) => row[column.index] ?? "").filter((cell) => !saysNothing(cell));
  const units = cells.filter((cell) => ["ohm", "farad", "henry"].includes(unitNamed(cell)?.measure ?? ""));
  return units.length * 2 > cells.length ? { ...column, field: "value unit" } : column;
}

/** A list that prints prices with tax only is read with those. */
function withSomePrice(columns: readonly OfferColumn[]): readonly OfferColumn[] {
  if (columns.some((column) => column.field === "price")) return columns;
  return columns.map((column) => {
    const isPrice = /pric|preis|prijs|prix|tvac|ttc|[€$£]/.test(fold(column.head));
    return column.field === "nothing" && isPrice
      ? { ...columnOfHead(column.head, column.index), field: "price" }
      : column;
  });
}

/** Of several numbers the vendor's own comes first in every list seen; the others are makers'. */
function oneStockNumber(columns: readonly OfferColumn[]): OfferColumn[] {
  const first = columns.find((column) => column.field === "stock number");
  return columns.map((column) =>
    column.field === "stock number" && column !== first ? { ...column, field: "nothing" } : column,
  );
}

/** A column by its head alone. @example columnOfHead("ab 25 St.", 4).from // 25 */
export const columnOfHead = (head: string, index: number): OfferColumn =>
  columnAs(fieldOfHead(head) ?? "nothing", head, index);

/** A column of which it is known what it holds; its head still tells units and, of prices, how many they are for. */
export function columnAs(field: ColumnField, head: string, index: number): OfferColumn {
  const words = fold(head);
  const bracket = /[([]\s*([^)\]]+?)\s*[)\]]/.exec(head)?.[1] ?? /,\s*(\S+)$/.exec(head)?.[1] ?? null;
  if (field !== "price") return { index, head, field, from: null, per: null, unit: bracket };
  const count = /(?:\b(?:per|pro|je|pour|les|par|voor|for|(?:lots?|box(?:es)?|bags?|sets?) of)|\/|%)\s*(\d+)/.exec(
    words,
  )?.[1];
  const per = count ? Number(count) : PER_PIECE.test(words) ? 1 : null;
  const from = count ? null : /(\d+)/.exec(words.replace(/\(.*?\)/g, (inner) => (/\d/.test(inner) ? inner : "")))?.[1];
  return { index, head, field, from: from ? Number(from) : null, per, unit: null };
}

/** Heads that say a price is for one piece, whatever a sales unit holds. */
const PER_PIECE = /\b(per|pro|je|par|a la|la)\s*(stuk|stuck|stk|st|piece|pce|pc)\b/;
