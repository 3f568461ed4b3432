import { designatorsAt, designatorsOf } from "../records/designators.js";
import { withUnitsJoined } from "./bodyRoles.js";
import { cellsByContent, PART_NUMBER } from "./byContent.js";
import { cellsUnder, headFor } from "./columns.js";
import { isNumberedHeading } from "./headings.js";
import { withThousandsClosed } from "./looseCommas.js";
import { CHECK_BOX, type Strip } from "./pieces.js";
import type { Head, Piece, RowCell } from "./row.js";

/** What parts designators from the rest: blanks, or a lone stroke ("R1-2.2 meg., 1/2 watt") when words follow. */
const BOUND = /^(?:[*†‡§]*\s*[:=.]?\s*[-–=:,]?\s+|[-–—=:](?=[\d.½¼¾A-Za-z]\S*\s))/;

/** A strip without the box to tick at its start; `ticked` tells whether there was one. */
export function withoutBox(strip: Strip): { strip: Strip; ticked: boolean } {
  const first = strip.pieces[0];
  const box = first && CHECK_BOX.exec(first.text);
  if (!first || !box) return { strip, ticked: false };
  const rest = { text: first.text.slice(box[0].length), start: first.start + box[0].length };
  const pieces = rest.text === "" ? strip.pieces.slice(1) : [...withCount(rest), ...strip.pieces.slice(1)];
  return { strip: { ...strip, pieces }, ticked: true };
}

const COUNT = /^(\d{1,3})(?:\s*[-–@×x]|\s+(?:each|ea|off|pcs?)\b\.?)\s+(?=\S)/;

/** "2 - 100 ohm, 1/2 watt" behind a box: a count stands apart from what it counts. */
function withCount(piece: Piece): Piece[] {
  const count = COUNT.exec(piece.text);
  if (!count) return [piece];
  const rest = { text: piece.text.slice(count[0].length), start: piece.start + count[0].length };
  return [{ text: count[1]!, start: piece.start }, rest];
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
  const joined = withUnitsJoined(heads, withThousandsClosed(heads, strip));
  const under = cellsUnder(heads, joined);
  const cells = heads.some((head) => head.role === "designator") ? under : withNameInside(under);
  if (strip.form !== "gaps") return cells;
  return fitsColumns(heads, joined.pieces) ? splitRunOn(cells) : cellsInOrder(heads, joined.pieces);
}

const NAME_BEHIND = /\s([A-Z]{1,3}[-.]?\d.*)$/;

/** Where no column names the parts their names stand with what describes them: "C1 Cond., .1 mfd", "Resistor R1". */
function withNameInside(cells: readonly RowCell[]): RowCell[] {
  const at = cells.findIndex((cell) => /^[A-Za-z]/.test(cell.text));
  const text = cells[at]?.text ?? "";
  const found = at < 0 ? null : designatorsAt(text);
  const behind = found ? null : NAME_BEHIND.exec(text);
  const name = behind && designatorsOf(behind[1]!) ? behind[1]! : found ? text.slice(0, found.end) : null;
  const rest = behind ? text.slice(0, behind.index) : text.slice(found?.end ?? 0).replace(BOUND, "");
  if (name === null || (found && rest === text.slice(found.end) && rest !== "")) return [...cells];
  const own: RowCell[] = [{ role: "designator", text: name, unit: null }];
  if (rest !== "") own.push({ role: "description", text: rest, unit: null });
  return cells.flatMap((cell, i) => (i === at ? own : [cell]));
}

/** "R1 470K" typed as one piece: the designators stand apart from the rest. */
function looseDesignators(piece: Piece, index: number): Piece[] {
  const found = index === 0 && !isNumberedHeading(piece.text) ? designatorsAt(piece.text) : null;
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
