import { nameDesignators, settleColumns } from "./columns.js";
import { headsOf, roleOfHead } from "./heads.js";
import { isRule, type Strip } from "./pieces.js";
import type { Head, Piece } from "./row.js";

/** The heads of a table and how many lines they are printed over. */
export type HeadBlock = { readonly heads: Head[]; readonly height: number };

const TALLEST = 3;
const LONGEST_WORD = 24;

/** The head that starts at a strip, printed over one to three lines, its columns settled by the body below; or null. */
export function headBlockAt(strips: readonly Strip[], at: number): HeadBlock | null {
  if (isMoreOfHead(strips, at)) return { heads: headsAbove(strips, at)!, height: 1 };
  for (let height = TALLEST; height >= 1; height--) {
    const lines = strips.slice(at, at + height);
    const heads = height === 1 ? headsOf(lines[0]!.pieces) : stackedHeads(lines);
    if (!heads) continue;
    const body = bodyBelow(strips, at + height);
    const settled = lines[0]!.form === "gaps" ? settleColumns(heads, body) : heads;
    return { heads: nameDesignators(settled, body), height };
  }
  return null;
}

/** Heads broken over lines: the pieces that stand above each other are one; all of them must be known. */
function stackedHeads(lines: readonly Strip[]): Head[] | null {
  const isPlain = (strip: Strip) =>
    strip.pieces.some((piece) => piece.text.trim() !== "") &&
    !isRule(strip) &&
    strip.form === lines[0]!.form &&
    strip.pieces.every((piece) => piece.text.length <= LONGEST_WORD);
  if (lines.length < 2 || !lines.every(isPlain)) return null;
  const stacked = stack(lines);
  const filled = stacked.filter((piece) => piece.text.trim() !== "");
  if (!filled.every((piece) => roleOfHead(piece.text))) return null;
  return headsOf(stacked)?.map((head, i) => ({ ...head, end: filled[i]!.end })) ?? null;
}

function stack(lines: readonly Strip[]): (Piece & { end: number })[] {
  const columns: { text: string; start: number; end: number }[] = [];
  for (const { pieces, form } of lines) {
    for (const piece of pieces) {
      const end = form === "gaps" ? piece.start + piece.text.length : piece.start + 1;
      const over = columns.find((column) => piece.start < column.end && column.start < end);
      if (!over) columns.push({ text: piece.text.trim(), start: piece.start, end });
      else {
        over.text = `${over.text} ${piece.text.trim()}`.trim();
        [over.start, over.end] = [Math.min(over.start, piece.start), Math.max(over.end, end)];
      }
    }
  }
  return columns.sort((a, b) => a.start - b.start);
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
