import { designatorsOf } from "../records/designators.js";
import { printedHeadsAt } from "./headBlock.js";
import { isKindHeading, isPageLine } from "./headings.js";
import type { Strip } from "./pieces.js";
import type { Piece } from "./row.js";

const SLACK = 2;

/**
 * The strips of a document with side-by-side panels put one below the other: the left panel of a page is read to its
 * end before the right one. Strips of other documents come back as they are.
 */
export function unfoldPanels(strips: readonly Strip[]): Strip[] {
  const unfolded: Strip[] = [];
  let at = 0;
  let headed = false;
  while (at < strips.length) {
    const { starts, height } = panelsAt(strips, at);
    if (starts.length < 2) {
      headed ||= strips[at]!.form === "cells" && printedHeadsAt(strips, at) !== null;
      unfolded.push(...(headed ? [strips[at]!] : pairsInLine(strips[at]!)));
      at++;
      continue;
    }
    const end = blockEnd(strips, at + height);
    const block = strips.slice(at, end);
    starts.forEach((start, panel) => {
      const stop = starts[panel + 1] ?? Number.POSITIVE_INFINITY;
      unfolded.push(...block.map((strip) => panelOf(strip, start, stop)).filter((strip) => strip.pieces.length > 0));
    });
    at = end;
  }
  return unfolded;
}

/** Where the panels start: at each of several headings of kinds, each head of designators, or each return of the first head. */
function panelsAt(strips: readonly Strip[], at: number): { starts: number[]; height: number } {
  const { form, pieces } = strips[at]!;
  if (form === "gaps" && pieces.length > 1 && pieces.every((piece) => isKindHeading(piece.text)))
    return { starts: pieces.map((piece) => piece.start), height: 1 };
  const block = form === "strokes" ? null : printedHeadsAt(strips, at);
  if (!block) return { starts: [], height: 1 };
  const isTable = form === "cells";
  const [first, ...more] = block.heads.filter((head) => head.role === "designator");
  const named = first ? [first, ...more.filter((head) => !isTable || head.text === first.text)] : [];
  const again = block.heads.filter((head, i) => i !== 1 && head.text === block.heads[0]!.text);
  return { starts: (named.length > 1 ? named : again).map((head) => head.start), height: block.height };
}

/** A block of panels goes to the next page line, two blank lines, or the next head. */
function blockEnd(strips: readonly Strip[], from: number): number {
  for (let end = from; end < strips.length; end++) {
    const strip = strips[end]!;
    const isBlank = (i: number) => (strips[i]?.text.trim() ?? "") === "";
    const isFoot = strip.pieces.length > 0 && isPageLine(strip.text) && !/continued on/i.test(strip.text);
    if (isFoot || panelsAt(strips, end).starts.length > 1 || (isBlank(end) && isBlank(end + 1))) return end;
  }
  return strips.length;
}

function panelOf(strip: Strip, start: number, stop: number): Strip {
  const slack = strip.form === "gaps" ? SLACK : 0;
  const pieces = strip.pieces.filter((piece) => piece.start >= start - slack && piece.start < stop - slack);
  return { ...strip, pieces, text: pieces.map((piece) => piece.text).join("  ") };
}

/** A line that holds several parts without any head: "R1 47K    R11 2K2", "C3 ... 300V   R3 ...". */
function pairsInLine(strip: Strip): Strip[] {
  const pieces = strip.pieces.filter((piece) => piece.text.trim() !== "");
  if (strip.form === "strokes" || !startsPart(pieces[0], pieces[1])) return [strip];
  const starts = pieces.flatMap((piece, i) => (startsPart(piece, pieces[i + 1]) ? [i] : []));
  if (starts.length < 2) return [strip];
  return starts.map((from, i) => {
    const own = pieces.slice(from, starts[i + 1]);
    return { ...strip, pieces: own, text: own.map((piece) => piece.text).join("  ") };
  });
}

/** A piece that is a designator with something behind it, or "R11 2K2" in one. */
function startsPart(piece: Piece | undefined, next: Piece | undefined): boolean {
  if (!piece) return false;
  const alone = designatorsOf(piece.text);
  if (alone) return next !== undefined && !designatorsOf(next.text) && !piece.text.endsWith(",");
  const first = piece.text.split(" ", 1)[0]!;
  return piece.text.length > first.length && designatorsOf(first) !== null && /^\S+\s+[\d.½¼]/.test(piece.text);
}
