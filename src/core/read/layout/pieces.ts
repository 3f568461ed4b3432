import type { SourceLine } from "../sourceLine.js";
import type { Piece } from "./row.js";

/** A line with its pieces; `form` is how they were told apart: cells of a table, strokes drawn between, or gaps in a typed line. */
export type Strip = {
  readonly numbers: readonly number[];
  readonly form: "cells" | "strokes" | "gaps";
  readonly text: string;
  readonly pieces: readonly Piece[];
};

const RULE = /^[\s\-=_+|*.:~–—]*$/;
const GAP = /\s+\|\s+| {2,}| ?\t ?|\s*\.{2,}\s*|(?: \.(?!\d)){2,} *| \. /g;

/** A box to tick at the start of a line, or several of them: (  ), [x], ____. */
export const CHECK_BOX = /^(?:\s*(?:\(\s{0,3}[xX]?\s{0,3}\)|\[\s{0,3}[xXe]?\s{0,3}\]|_{2,}|[☐☑□]))+\s*/;

/** Whether a line holds nothing but strokes, dots or dashes. */
export const isRule = (strip: Strip) => RULE.test(strip.text);

/** A strip of some of its pieces, its text made of them. */
export const stripOfPieces = (strip: Strip, pieces: readonly Piece[]): Strip => ({
  ...strip,
  pieces,
  text: pieces.map((piece) => piece.text).join("  "),
});

/** A source line as a strip: blank cells are kept in tables, gaps and leaders part a typed line. */
export function stripOf(line: SourceLine): Strip {
  const numbers = Array.from({ length: line.text.split("\n").length }, (_, i) => line.number + i);
  const text = withNamesClosed(unspaced(withTabStops(line.text.replaceAll("\n", " "))));
  if (line.cells)
    return { numbers, form: "cells", text, pieces: line.cells.map((cell, start) => ({ text: tidy(cell), start })) };
  if (isDrawn(text)) return { numbers, form: "strokes", text, pieces: strokePieces(text) };
  return { numbers, form: "gaps", text, pieces: gapPieces(text) };
}

const TAB_STOP = 8;

/** A text with each tab moved to its stop, as a typist saw it: blanks fill up to the tab, which still parts. */
function withTabStops(text: string): string {
  if (!text.includes("\t")) return text;
  let line = "";
  for (const char of text) line += char === "\t" ? "\t".padStart(TAB_STOP - (line.length % TAB_STOP)) : char;
  return line;
}

const SPACED = /(?<![A-Z])(?:[A-Z] ){4,}[A-Z](?![A-Za-z])/g;

/** "R E S I S T O R S" is a word set wide. */
const unspaced = (text: string) => text.replace(SPACED, (word) => word.replaceAll(" ", ""));

const APART_NAME = /(?<=^|\s)([RCLTV]|VR|CR|RV|SW|PL|CH) (\d{1,3}[A-F]?)(?=\s*[-–=:]\s)/g;

/** "R 1 - 470K": letters typed apart from their number, before the stroke that parts a name from its value. */
const withNamesClosed = (text: string) => text.replace(APART_NAME, "$1$2 ");

const tidy = (cell: string) => cell.replace(/\s+/g, " ").trim();
const isDrawn = (text: string) => /^\s*\|.*\|/.test(text) || (text.match(/\|/g)?.length ?? 0) >= 2;

/**
 * Cells between strokes; an emphasised or struck-through text of Markdown is read as meant. A stroke at the very start
 * frames the table; one behind blanks bounds an empty first cell.
 */
function strokePieces(text: string): Piece[] {
  const inner = /^\s?\|/.test(text) ? text.trim().replace(/^\||\|$/g, "") : text;
  return inner.split("|").map((cell, start) => ({ text: plainMarkdown(cell).trimEnd(), start }));
}

const plainMarkdown = (text: string) =>
  text
    .replace(/~~[^~]*~~/g, " ")
    .replace(/<br\s*\/?>/gi, " ")
    .replace(/\*{1,2}([^*]+)\*{1,2}/g, "$1")
    .replace(/`/g, "");

/** Pieces of a typed line: parted by two blanks, a tab, leaders or a lone stroke; a box to tick stays with what follows. */
function gapPieces(text: string): Piece[] {
  const pieces: Piece[] = [];
  const box = CHECK_BOX.exec(text)?.[0].length ?? 0;
  let start = 0;
  const push = (end: number) => {
    const own = text.slice(start, end);
    const lead = own.length - own.trimStart().length;
    if (own.trim() !== "") pieces.push({ text: own.trim(), start: start + lead });
  };
  for (const gap of text.matchAll(GAP)) {
    if (gap.index < box || (gap[0].includes(".") && isInsideNumber(text, gap.index, gap[0]))) continue;
    push(gap.index);
    start = gap.index + gap[0].length;
  }
  push(text.length);
  return pieces;
}

/** "3...30 pF" is a range, no leader. */
function isInsideNumber(text: string, at: number, gap: string): boolean {
  return gap === "..." && /\d/.test(text[at - 1] ?? "") && /\d/.test(text[at + 3] ?? "");
}
