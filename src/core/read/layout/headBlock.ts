import { rolesByBody } from "./bodyRoles.js";
import { isNumbered, nameDesignators, settleColumns, withKeyNumbers } from "./columns.js";
import { isKindHeading } from "./headings.js";
import { headsOf, roleOfHead, roleOfLongHead } from "./heads.js";
import { isRule, type Strip } from "./pieces.js";
import type { Head, Piece } from "./row.js";

/** The heads of a table, how many lines they are printed over, and whether bare numbers name the parts below. */
export type HeadBlock = { readonly heads: Head[]; readonly height: number; readonly numbered: boolean };

const TALLEST = 3;
const LONGEST_WORD = 24;

/** The head that starts at a strip, printed over one to three lines, its columns settled by the body below; or null. */
export function headBlockAt(strips: readonly Strip[], at: number): HeadBlock | null {
  if (isMoreOfHead(strips, at)) return { heads: headsAbove(strips, at)!, height: 1, numbered: false };
  const block = printedHeadsAt(strips, at);
  if (!block) return null;
  const body = bodyBelow(strips, at + block.height);
  const settled = strips[at]!.form === "gaps" ? settleColumns(block.heads, body) : block.heads;
  const keyed = withKeyNumbers(settled);
  const numbered = isNumbered(keyed, body);
  const named = numbered ? keyed : nameDesignators(settled, body);
  return { heads: rolesByBody(named, body), height: block.height, numbered };
}

/** The heads that start at a strip as they are printed, the body not looked at; or null. */
export function printedHeadsAt(strips: readonly Strip[], at: number): HeadBlock | null {
  const first = headsOf(strips[at]!.pieces);
  for (let height = TALLEST; height > 1; height--) {
    const heads = stackedHeads(strips.slice(at, at + height), first !== null);
    if (heads) return { heads, height, numbered: false };
  }
  return first && { heads: first, height: 1, numbered: false };
}

/** Heads broken over lines: the pieces that stand above each other are one, and then known; one of a single line may be strange. */
function stackedHeads(lines: readonly Strip[], isHead: boolean): Head[] | null {
  const isPlain = (strip: Strip) =>
    strip.pieces.some((piece) => piece.text.trim() !== "") &&
    !isRule(strip) &&
    !(strip.pieces.length === 1 && isKindHeading(strip.pieces[0]!.text)) &&
    strip.form === lines[0]!.form &&
    strip.pieces.every((piece) => piece.text.length <= LONGEST_WORD);
  if (lines.length < 2 || !lines.every(isPlain)) return null;
  const stacked = stack(lines, isHead);
  const filled = stacked.filter((piece) => piece.text.trim() !== "");
  const roleOf = isAllWords(lines) ? roleOfLongHead : roleOfHead;
  const strange = filled.filter((piece) => roleOf(piece.text) === null && !(isHead && piece.onFirst));
  if (strange.length > (isAllWords(lines) ? filled.length * MOST_STRANGE : 0)) return null;
  return headsOf(stacked)?.map((head, i) => ({ ...head, end: filled[i]!.end })) ?? null;
}

const MOST_STRANGE = 0.5;

/** Lines of several words each and no figure: more than headings of kinds over or under the heads, and no row. */
const isAllWords = (lines: readonly Strip[]) =>
  lines.every(({ pieces }) => {
    const filled = pieces.filter(({ text }) => text.trim() !== "");
    const isHeadings = filled.every(({ text }) => isKindHeading(text));
    return filled.length > 1 && !isHeadings && filled.every(({ text }) => !/\d/.test(text));
  });

/** A column of heads: its words, and whether they all stand on the first line. */
type StackedHead = Piece & { readonly end: number; readonly onFirst: boolean };

/**
 * The pieces of head lines by column. Where the first line is a head by itself, what spans several pieces of the line
 * below ("RATING" over ohms and watts) names none.
 */
function stack(lines: readonly Strip[], isHead: boolean): StackedHead[] {
  let columns: readonly StackedHead[] = [];
  for (const { pieces, form } of lines) {
    const onFirst = columns.length === 0;
    const own = pieces.map(({ text, start }): StackedHead => {
      const end = form === "gaps" ? start + text.length : start + 1;
      return { text: text.trim(), start, end, onFirst };
    });
    const isSpanned = (column: StackedHead) => own.filter((piece) => overlap(piece, column)).length > 1 && isHead;
    columns = own.reduce(
      withPiece,
      columns.filter((column) => !isSpanned(column)),
    );
  }
  return [...columns].sort((a, b) => a.start - b.start);
}

const overlap = (a: StackedHead, b: StackedHead) => a.start < b.end && b.start < a.end;

/** The columns with one more piece: under the one it overlaps, or a column of its own. */
function withPiece(columns: readonly StackedHead[], piece: StackedHead): readonly StackedHead[] {
  const over = columns.find((column) => overlap(piece, column));
  if (!over) return [...columns, piece];
  const joined = {
    text: `${over.text} ${piece.text}`.trim(),
    start: Math.min(over.start, piece.start),
    end: Math.max(over.end, piece.end),
    onFirst: over.onFirst && piece.onFirst,
  };
  return columns.map((column) => (column === over ? joined : column));
}

const bodyBelow = (strips: readonly Strip[], from: number) => {
  const end = strips.findIndex((strip, at) => at >= from && headsOf(strip.pieces) !== null);
  return strips.slice(from, end < 0 ? strips.length : end);
};

/** A line under a head in a table that only holds more words of heads (a head merged over two rows). */
function isMoreOfHead(strips: readonly Strip[], at: number): boolean {
  const strip = strips[at]!;
  if (strip.form === "gaps" || !headsAbove(strips, at)) return false;
  const filled = strip.pieces.filter((piece) => piece.text.trim() !== "");
  return filled.every((piece) => roleOfHead(piece.text) !== null) && strip.pieces[0]!.text.trim() === "";
}

const headsAbove = (strips: readonly Strip[], at: number) => (at > 0 ? headsOf(strips[at - 1]!.pieces) : null);
