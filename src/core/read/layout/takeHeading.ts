import { isUnfinished, type OpenRow, textIn } from "./continuation.js";
import { isContinued, isKindHeading, isSpacedOut, sectionName } from "./headings.js";
import type { Strip } from "./pieces.js";
import type { Walk } from "./walk.js";

const ERRATA = /^(?:errat|corrections?\b|addend|additions|amendments?\b|corrigend)/i;
const MOST_INDENT = 8;
const SLACK = 2;
const LONGEST_SHOWN = 90;

/** Headings: of kinds of parts, of sections, of errata. */
export function takeHeading(walk: Walk, strip: Strip): boolean {
  const filled = strip.pieces.filter((piece, i) => piece.text.trim() !== "" && (i === 0 || !isBracketed(piece.text)));
  const framed = isFramed(strip.text) || isSpacedOut(strip.text);
  const text = (framed ? strip.text.replace(/\s+/g, " ") : (filled[0]?.text ?? "")).trim();
  if (ERRATA.test(text) && !/[.]$/.test(text)) {
    walk.errata = true;
    walk.open = null;
    walk.furniture.push(...strip.numbers);
    return true;
  }
  if ((filled.length !== 1 && !framed) || /,$/.test(text) || !standsAsHeading(walk, strip)) return false;
  if (isNextNote(walk, strip, text)) return false;
  const isTitle = /^#\s/.test(text);
  const kind = isKindHeading(text);
  const isSubtitle = walk.pending !== null && isBracketed(text);
  const section = kind || isTitle || isSubtitle ? null : sectionName(text);
  if (!kind && section === null) return false;
  if (kind) walk.heading = text;
  else
    [walk.pending, walk.heading] = [{ name: section!, afterHead: walk.heads !== null || walk.rows.length > 0 }, null];
  if (!isContinued(text)) walk.open = null;
  walk.furniture.push(...strip.numbers);
  return true;
}

/** "3. GMV." below "2. Tolerance 1%." is the next note, no numbered heading. */
const isNextNote = ({ notes }: Walk, { numbers }: Strip, text: string) =>
  /^\(?\d{1,2}[.)]\s/.test(text) && notes.at(-1)?.lines.at(-1) === numbers[0]! - 1;

const isBracketed = (text: string) => /^\(.*\)$/.test(text.trim());

/** A heading stands apart: after a blank line, out of the description's column, centred in a drawn cell or loud under its rule. */
export function standsAsHeading(walk: Walk, strip: Strip): boolean {
  const piece = strip.pieces.find((candidate) => candidate.text.trim() !== "")!;
  if (strip.form === "cells" || /^#{1,6}\s/.test(piece.text)) return true;
  if (strip.form === "strokes") return /^\s{4,}/.test(piece.text) || (walk.ruled && isShown(piece.text.trim()));
  if (walk.open === null || walk.blank || walk.apart) return true;
  const text = walk.heads?.find((head) => head.role === "description")?.start ?? walk.heads?.[1]?.start;
  const { start, textStart } = walk.open;
  if (text === undefined)
    return piece.start < start - SLACK || (isShown(piece.text) && isBeside(piece.start, textStart));
  return isBeside(piece.start, text) || isLouder(piece.text, walk.open);
}

/**
 * Capitals in the column of the description under a row that is whole, where it holds small letters, or these name kinds
 * of parts; and kinds of parts with a colon.
 */
function isLouder(text: string, { cells }: OpenRow): boolean {
  const above = textIn(cells, "description");
  const isLoud = text.length <= LONGEST_SHOWN && /^[^a-z(]*[A-Z]{3}[^a-z(]*(?:\(|$)/.test(text);
  const kinds = ((isLoud && /^[^(,]*S\s*(?:[(,]|$)/.test(text)) || /:$/.test(text)) && isKindHeading(text);
  return !isUnfinished(above) && (kinds || (isLoud && /[a-z]{2}/.test(above)));
}

const isBeside = (start: number, text: number) => start < text - SLACK || start > text + MOST_INDENT;

/** Without columns only capitals, marks around it, or a colon behind tell a heading from the rest of a row. */
const isShown = (text: string) =>
  text.length <= LONGEST_SHOWN &&
  (/^[^a-z]*(?:\([^)]*\))?[^a-z]*$/.test(text) || /^[*=_~\-([].*[*=_~\-)\]]$|:$/.test(text));

/** "*** POWER SUPPLY ***": stars around a heading explain nothing. */
export const isFramed = (text: string) => /^\s*([*]+)[^*]+\1\s*$/.test(text);
