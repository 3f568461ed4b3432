import type { Written } from "./host.js";
import { looksLikeValue, type StoredCell } from "./library.js";

/** What a cell is to hold; a format only where the cell has to leave its column's. */
export type Content = { readonly content: string; readonly format?: string };

/** The number format of a column of text. */
export const TEXT_FORMAT = "@";

/**
 * How a text is stored so that it stays text: an apostrophe guards what would run or turn into a number or a date. A
 * column of text guards all but formulas, and would show the apostrophe: a cell that needs one leaves that format.
 */
export function textContent(text: string, format: string | undefined): Content {
  const wouldRun = text.startsWith("=");
  if (format === TEXT_FORMAT) return wouldRun ? { content: `'${text}`, format: "" } : { content: text };
  return { content: wouldRun || text.startsWith("'") || looksLikeValue(text) ? `'${text}` : text };
}

/** How anything written is stored in a cell of a number format. */
export function contentOf(written: NonNullable<Written>, format: string | undefined): Content {
  if (typeof written === "string") return textContent(written, format);
  const content = typeof written === "object" ? written.formula : String(written).toUpperCase();
  return format === TEXT_FORMAT ? { content, format: "" } : { content };
}

/** How a cell is to be stored anew when its column gets another format; null when it can stay as it is. */
export function contentUnder(format: string, stored: StoredCell): Content | { readonly format: string } | null {
  const isValue = stored.isFormula || (stored.format !== TEXT_FORMAT && looksLikeValue(stored.content));
  if (isValue) return format === TEXT_FORMAT ? { format: "" } : null;
  const isGuarded = stored.content.startsWith("'") && stored.format !== TEXT_FORMAT;
  return isGuarded ? textContent(stored.content.slice(1), format) : null;
}

/** Is there nothing to do? Most cells of a list that is written again hold already what they are given. */
export function holds(stored: StoredCell | undefined, { content, format }: Content): boolean {
  if (stored?.isFormula || format !== undefined) return false;
  return (stored?.content ?? "") === content;
}
