import type { Warning } from "../../part.js";
import type { ListRecord } from "../records/listRecord.js";
import type { Words } from "../words/words.js";

/** How many pieces a row is for, with a warning where the printed count and the designators disagree. */
export type Quantity = { readonly quantity: number; readonly warnings: readonly Warning[] };

const COUNTS = /^(?:used|required|reqd|req|off|pieces|pcs)$/;

/** The printed quantity (the largest of several variants' columns), else one for each designator; a can counts once. */
export function quantityOf(
  record: ListRecord,
  words: readonly Words[],
  sections: number,
  notFitted: boolean,
): Quantity {
  const names = sections > 0 && record.names.length === sections ? 1 : Math.max(1, record.names.length);
  const columns = record.cells.filter((cell) => cell.role === "quantity").map((cell) => Number.parseInt(cell.text, 10));
  const counted = columns.filter((count) => count > 0);
  const named = record.names.length > 0;
  const printed =
    counted.length > 0 ? Math.max(...counted) : (countInText(words) ?? (named ? null : countInBrackets(words)));
  if (printed === null || notFitted) return { quantity: names, warnings: [] };
  const clash =
    named && printed !== names && printed !== record.names.length && printed !== names * (record.circuits ?? 1);
  const text = `the list prints ${printed} pieces for ${record.names.length} designators`;
  return { quantity: printed, warnings: clash ? [{ code: "conflict", text }] : [] };
}

/** "3 used", "(2 required)", "4 off". */
function countInText(words: readonly Words[]): number | null {
  for (const { tokens, amounts } of words)
    for (const amount of amounts) {
      const next = tokens[amount.to];
      if (amount.aside === "count" || amount.aside === "brackets")
        if (next && COUNTS.test(next.key) && amount.figures[0]!.unit === null) return amount.figures[0]!.number;
    }
  return null;
}

/** "Knobs (3)": what ends in a number in brackets counts things that have no name. */
function countInBrackets(words: readonly Words[]): number | null {
  const count = words.map(({ text }) => /\((\d{1,3})\)\s*$/.exec(text)?.[1]).find((found) => found !== undefined);
  return count === undefined ? null : Number(count);
}
