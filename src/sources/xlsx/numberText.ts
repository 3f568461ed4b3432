import { attribute, elements } from "./markup.js";

/** How a cell's number is shown, as far as a parts list is concerned. */
export type NumberLook = "plain" | "percent" | "date";

const DATES = new Set([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 46, 47]);
const PERCENTS = new Set([9, 10]);
const DAYS_1900 = 25_569;

/** The looks of a workbook's cell styles, by style number. @see ECMA-376 part 1, 18.8.30 (number formats) */
export function looksOf(styles: string): readonly NumberLook[] {
  const own = new Map<number, NumberLook>();
  for (const { tag } of elements(styles, "numFmt")) {
    own.set(Number(attribute(tag, "numFmtId")), lookOf(attribute(tag, "formatCode") ?? ""));
  }
  const cells = [...elements(styles, "cellXfs")][0]?.inside ?? "";
  return [...elements(cells, "xf")].map(({ tag }) => {
    const id = Number(attribute(tag, "numFmtId") ?? 0);
    return own.get(id) ?? (PERCENTS.has(id) ? "percent" : DATES.has(id) ? "date" : "plain");
  });
}

function lookOf(format: string): NumberLook {
  const signs = format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");
  if (signs.includes("%")) return "percent";
  return /[dmyhs]/i.test(signs) && !/[#?]/.test(signs) ? "date" : "plain";
}

/**
 * A stored number as a person sees it: 15 digits, percent with its sign, a date as a date.
 *
 * @example numberText("0.14440000000000003", "plain") // "0.1444"
 * @example numberText("0.05", "percent") // "5%"
 */
export function numberText(stored: string, look: NumberLook): string {
  const number = Number(stored);
  if (stored.trim() === "" || !Number.isFinite(number)) return stored;
  if (look === "percent") return `${rounded(number * 100)}%`;
  if (look === "date") return dateText(number);
  return rounded(number);
}

const rounded = (number: number) => String(Number(number.toPrecision(15)));

function dateText(days: number): string {
  const date = new Date(Math.round((days - DAYS_1900) * 86_400_000));
  return Number.isNaN(date.getTime()) ? rounded(days) : date.toISOString().slice(0, 10);
}
