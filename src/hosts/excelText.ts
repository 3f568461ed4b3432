import type { Written } from "./host.js";

/** What Excel is given for one cell: null leaves it; `format` null keeps the cell's own number format. */
export type ExcelContent = { readonly content: string | number | boolean | null; readonly format: string | null };

const TEXT_FORMAT = "@";
const GENERAL = "General";

/** Text that no Excel, in no language, takes for a number, a date, a truth value or a formula. */
const PLAIN = /^[^\d=+\-@'#]*$/;
const WORD = /^(true|false|[a-z]{3,9})$/i;

/**
 * How anything written reaches an Excel cell as what it is. Text that Excel might read as something else goes into a cell
 * of text; a formula leaves such a cell first, or Excel would show it instead of working it out.
 *
 * @param format The cell's number format until now.
 */
export function excelContent(written: Written, format: string): ExcelContent {
  if (written === null) return { content: null, format: null };
  if (typeof written === "object") {
    return { content: written.formula, format: format === TEXT_FORMAT ? GENERAL : null };
  }
  if (typeof written !== "string" || written === "") {
    return { content: written, format: format === TEXT_FORMAT && written !== "" ? GENERAL : null };
  }
  // Excel takes the first apostrophe away, so a text that begins with one needs two.
  if (written.startsWith("'")) return { content: `'${written}`, format: format === TEXT_FORMAT ? GENERAL : null };
  const isPlain = PLAIN.test(written) && !WORD.test(written);
  return { content: written, format: isPlain || format === TEXT_FORMAT ? null : TEXT_FORMAT };
}
