import { designatorsAt, designatorsOf } from "../records/designators.js";
import { withUnitsJoined } from "./bodyRoles.js";
import { cellsByContent, cellsUnder, headFor, PART_NUMBER } from "./columns.js";
import { CHECK_BOX, type Strip } from "./pieces.js";
import type { Head, Piece, RowCell } from "./row.js";

/** What parts designators from the rest: blanks, or a lone stroke ("R1-2.2 meg., 1/2 watt") when words follow. */
const BOUND = /^(?:[*†‡§]*\s*[:=]?\s*[-–=:,]?\s+|[-–—=:](?=[\d.½¼¾A-Za-z]\S*\s))/;

/** A strip without the box to tick at its start; `ticked` tells whether there was one. */
export function withoutBox(strip: Strip): { strip: Strip; ticked: boolean } {
  const first = strip.pieces[0];
  const box = first && CHECK_BOX.exec(first.text);
  if (!first || !box) return { strip, ticked: false };
  const rest = { text: first.text.slice(box[0].length), start: first.start + box[0].length };
  const pieces = rest.text === "" ? strip.pieces.slice(1) : [rest, ...strip.pieces.slice(1)];
  return { strip: { ...strip, pieces }, ticked: true };
}

const BULLET = /^(?:[-*•+]|\d{1,2}[.)])\s+(?=\S)/;

/** A strip without the bullet at its start, where designators follow that no part has yet ("- R10: 1k 5W"); else null. */
export function behindBullet(strip: Strip, isNew: (name: string) => boolean): Strip | null {
  const first = strip.pieces[0];
  const bullet = strip.form === "gaps" && first ? BULLET.exec(first.text) : null;
  if (!first || !bullet) return null;
  const text = first.text.slice(bullet[0].length).replace(/^\*\*([^*]+)\*\*/, "$1");
  const rest = { text, start: first.start + bullet[0].length };
  const found = designatorsAt(rest.text);
  if (!found?.names.every(isNew) || !BOUND.test(rest.text.slice(found.end))) return null;
  return { ...strip, pieces: [rest, ...strip.pieces.slice(1)] };
}

/** The cells of a strip: under heads where there are some that fit, else by what the pieces look like. */
export function cellsOf(strip: Strip, heads: readonly Head[] | null): RowCell[] {
  const pieces = heads ? strip.pieces : strip.pieces.flatMap(looseDesignators);
  if (!heads) return cellsByContent(pieces);
  const joined = withUnitsJoined(heads, strip);
  const cells = cellsUnder(heads, joined);
  if (strip.form !== "gaps") return cells;
  return fitsColumns(heads, joined.pieces) ? splitRunOn(cells) : cellsInOrder(heads, joined.pieces);
}

/** "R1 470K" typed as one piece: the designators stand apart from the rest. */
function looseDesignators(piece: Piece, index: number): Piece[] {
  const found = index === 0 ? designatorsAt(piece.text) : null;
  if (!found || found.end === piece.text.length) return [piece];
  const bound = BOUND.exec(piece.text.slice(found.end));
  if (!bound) return [piece];
  const split = found.end + bound[0].length;
  return [
    { text: piece.text.slice(0, found.end), start: piece.start },
    { text: piece.text.slice(split), start: piece.start + split },
  ];
}

/** A designator cell that holds designators and more ("R9 10 ohms") gives the more to the description. */
function splitRunOn(cells: readonly RowCell[]): RowCell[] {
  const at = cells.findIndex((cell) => cell.role === "designator");
  const text = cells[at]?.text ?? "";
  const found = at < 0 || designatorsOf(text) ? null : designatorsAt(text);
  const bound = found && /^\s*[-:=.]*\s+(?=\S)/.exec(text.slice(found.end));
  if (!found || !bound || /^\s*(?:thru|to|and|&)\s*$/i.test(text.slice(found.end))) return [...cells];
  const more = text.slice(found.end + bound[0].length);
  const rest = { role: PART_NUMBER.test(more) ? "partNumber" : "description", text: more, unit: null } as const;
  return cells.flatMap((cell, i) => (i === at ? [{ ...cell, text: text.slice(0, found.end) }, rest] : [cell]));
}

/** A typed line fits its columns unless a part number has slid under the designators. */
function fitsColumns(heads: readonly Head[], [, second]: readonly Piece[]): boolean {
  return (
    !second ||
    headFor(heads, second).role !== "designator" ||
    !PART_NUMBER.test(second.text) ||
    designatorsOf(second.text) !== null
  );
}

/** Pieces given to the heads in order, for lines typed without regard to columns. */
function cellsInOrder(heads: readonly Head[], pieces: readonly Piece[]): RowCell[] {
  if (pieces.length !== heads.length) return cellsByContent(pieces);
  return pieces.map((piece, i) => ({ role: heads[i]!.role, text: piece.text, unit: heads[i]!.unit }));
}
