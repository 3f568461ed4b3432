import { designatorsOf } from "../records/designators.js";
import type { Piece, Role, RowCell } from "./row.js";

/** Pieces of one column belong together; they are joined by a blank. */
function merge(cells: readonly RowCell[]): RowCell[] {
  const merged: RowCell[] = [];
  for (const cell of cells) {
    const last = merged.at(-1);
    if (last?.role === cell.role && last.unit === cell.unit)
      merged[merged.length - 1] = { ...last, text: `${last.text} ${cell.text}` };
    else merged.push(cell);
  }
  return merged;
}

/** What a part number looks like: letters and digits in groups, or a long number; a round one is a value in ohms, A500K one with its taper. */
export const PART_NUMBER =
  /^(?=.*\d)(?![ABC]\d{1,4}[kKM]$)(?![\d.,½¼]+\s?(?:[KkMRpnuµ]|meg|ohm|m?mf|[up]f))(?:(?:[A-Z0-9]{1,9}-|[A-Z]{1,3}\/)[A-Z0-9][A-Z0-9\-/.]*|[A-Z]{1,3}\d{3,}[A-Z0-9-]*|(?![1-9]\d{0,2}0+$)\d{5,})$/;

/**
 * The cells of a typed line without heads: designators, description, and a part number at the end; or a count first and
 * the designators last ("3  100K 1/2W  (R1, R2, R5)").
 */
export function cellsByContent(pieces: readonly Piece[]): RowCell[] {
  const cells = pieces.map(
    (piece, i): RowCell => ({ role: roleByContent(piece, i, pieces), text: piece.text, unit: null }),
  );
  return merge(
    cells.map((cell) => (cell.role === "designator" ? { ...cell, text: withoutBrackets(cell.text) } : cell)),
  );
}

const withoutBrackets = (text: string) => text.replace(/^\((.*)\)$/, "$1");

function roleByContent(piece: Piece, at: number, pieces: readonly Piece[]): Role {
  if (at === 0 && pieces.length > 1 && /^\d{1,3}\s?[×x]?$/.test(piece.text)) return "quantity";
  const isLast = at > 0 && at === pieces.length - 1 && !designatorsOf(pieces[0]!.text);
  const isBehindNumbers = pieces.slice(0, at).every((before) => /^\d{0,3}$/.test(before.text));
  if (at > 0 && goesOnList(pieces, at)) return "designator";
  if ((isBehindNumbers || isLast) && designatorsOf(withoutBrackets(piece.text))) return "designator";
  return at > 0 && PART_NUMBER.test(piece.text) ? "partNumber" : "description";
}

const JOINT = /^(?:thru|to|and|&|-|–)$/i;

/** "R6   R8  THRU  R11   15K": designators of one class set apart by wide blanks are one list. */
function goesOnList(pieces: readonly Piece[], at: number): boolean {
  const letters = lettersOf(pieces[0]!);
  return (
    letters !== null &&
    pieces.slice(1, at + 1).every((piece) => JOINT.test(piece.text) || lettersOf(piece) === letters) &&
    pieces.slice(at + 1).some((piece) => !JOINT.test(piece.text) && lettersOf(piece) === null)
  );
}

const lettersOf = ({ text }: Piece) => (designatorsOf(text) ? text.replace(/[-.\d].*$/, "") : null);
