import { attribute, elements, plainText, runsText } from "./markup.js";
import { type NumberLook, numberText } from "./numberText.js";

/** One row of a sheet: its number as the sheet shows it, its cells as text from column A on. */
export type SheetRow = { readonly number: number; readonly cells: readonly string[] };

const MOST_COLUMNS = 1000;

/**
 * The rows of a sheet that hold something, cells as text: what a formula last showed, never the formula.
 *
 * @param strings The workbook's shared strings, in order.
 * @param looks How numbers of each style are shown.
 * @see ECMA-376 part 1, 18.3.1 (worksheets)
 */
export function* sheetRows(
  markup: string,
  strings: readonly string[],
  looks: readonly NumberLook[],
): Generator<SheetRow> {
  let number = 0;
  for (const row of elements(markup, "row")) {
    number = Number(attribute(row.tag, "r") ?? number + 1);
    const cells: string[] = [];
    for (const cell of elements(row.inside, "c")) {
      const reference = attribute(cell.tag, "r");
      const column = reference ? columnOf(reference) : cells.length;
      if (column >= MOST_COLUMNS) continue;
      while (cells.length < column) cells.push("");
      cells[column] = cellText(cell.tag, cell.inside, strings, looks);
    }
    if (cells.some((cell) => cell !== "")) yield { number, cells };
  }
}

function cellText(tag: string, inside: string, strings: readonly string[], looks: readonly NumberLook[]): string {
  const type = attribute(tag, "t") ?? "n";
  if (type === "inlineStr") return runsText(inside);
  const start = inside.indexOf("<v");
  if (start < 0) return "";
  const stored = plainText(inside.slice(inside.indexOf(">", start) + 1, inside.indexOf("</v", start)));
  if (type === "s") return strings[Number(stored)] ?? "";
  if (type === "b") return stored === "1" ? "TRUE" : "FALSE";
  if (type !== "n") return stored;
  return numberText(stored, looks[Number(attribute(tag, "s") ?? 0)] ?? "plain");
}

/** Column letters to a number from 0: "A7" is 0, "AB3" is 27. */
function columnOf(reference: string): number {
  let column = 0;
  for (const letter of reference.replace(/[^A-Z]/g, "")) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
}
