import type { SourceLine } from "./sourceLine.js";

/** One line of a part-number table: the number, and what it stands for. */
export type NumberedPart = { readonly number: string; readonly description: string };

/** A part-number table as it was understood: its lines, and those that give no number or nothing beside it. */
export type PartNumberReading = {
  readonly rows: readonly NumberedPart[];
  readonly refused: readonly { readonly line: number; readonly text: string }[];
};

const NUMBER_HEAD =
  /^(?:p\/?n|(?:our|stock|part|drawing|order|catalog(?:ue)?|code|item)?\s*(?:no\.?|nos\.?|number|#)|part|code)$/i;
/** Columns that say nothing of the part itself. */
const OTHER_HEAD = /\b(?:maker|manufacturer|vendor|price|qty|quantity|notes?|remarks?)\b/i;

/**
 * A table of part numbers: the number stands under a head that names it, else first; the rest of the line is what it stands for.
 *
 * @example readPartNumbers([{ number: 1, text: "1006750-39  2 k 1/4 W", cells: null }]).rows[0] // { number: "1006750-39", description: "2 k 1/4 W" }
 */
export function readPartNumbers(lines: readonly SourceLine[]): PartNumberReading {
  const filled = lines.filter(({ text }) => text.trim() !== "");
  const [first] = filled;
  const heads = first ? cellsOf(first) : [];
  const place = heads.findIndex((head) => NUMBER_HEAD.test(head));
  const body = place < 0 ? filled : filled.slice(1);
  const kept = heads.map((head, at) => place < 0 || (at !== place && !OTHER_HEAD.test(head)));
  const read = body.map((line) => ({ line, row: rowOf(cellsOf(line), Math.max(place, 0), kept) }));
  return {
    rows: read.flatMap(({ row }) => row ?? []),
    refused: read.flatMap(({ line, row }) => (row ? [] : [{ line: line.number, text: line.text }])),
  };
}

function rowOf(cells: readonly string[], place: number, kept: readonly boolean[]): NumberedPart | null {
  const number = cells[place] ?? "";
  const described = cells.filter((cell, at) => at !== place && cell !== "" && (kept[at] ?? true)).join(" ");
  return /\d/.test(number) && /\w/.test(described) ? { number, description: described } : null;
}

/** The cells of a line; a typed one is cut at tabs and wide gaps, else behind its first word. */
function cellsOf({ text, cells }: SourceLine): readonly string[] {
  if (cells) return cells.map((cell) => cell.trim());
  const pieces = text.trim().split(/\t|\s{2,}|\s*[;=]\s*/);
  return pieces.length > 1 ? pieces : (/^(\S+)\s+(.*)$/.exec(text.trim())?.slice(1) ?? pieces);
}
