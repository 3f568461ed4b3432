import { columnNamesOf, designatorsAt, isKeyNumber } from "../records/designators.js";
import { PART_NUMBER } from "./byContent.js";
import { goesOnWithList, isUnfinished, joinCells, type OpenRow, readsOn, textIn } from "./continuation.js";
import { isPageLine } from "./headings.js";
import type { Strip } from "./pieces.js";
import type { RowCell } from "./row.js";
import { behindBullet, cellsOf, withoutBox } from "./splitCells.js";
import { isFramed, standsAsHeading, takeHeading } from "./takeHeading.js";
import { isFootnote, takeOther, takeRemark } from "./takeOther.js";
import { openRow, type Walk } from "./walk.js";

/** One line that is neither blank, rule nor head: a row, the rest of one, a heading, a note. */
export function takeLine(walk: Walk, printed: Strip): void {
  const listed = behindBullet(printed, (name) => isNew(walk, name));
  if (listed) walk.heads = null;
  const { strip, ticked } = withoutBox(listed ?? printed);
  const cells = withLetterInFull(walk, withRestDescribed(walk, cellsOf(strip, walk.heads)));
  if (walk.errata || (isFootnote(walk, strip) && !isFramed(strip.text))) takeRemark(walk, strip);
  else if (isRestOfBroken(walk, strip)) extend(walk, strip, cells);
  else if (takeNamedRow(walk, strip, cells) || takeHeading(walk, strip)) return;
  else if (strip.form === "gaps" && isPageLine(strip.text)) takePageLine(walk, strip);
  else if (!ticked && isRest(walk, strip, cells)) extend(walk, strip, cells);
  else if (isNamelessPart(walk, strip, cells, ticked)) openRow(walk, strip, cells);
  else if (isUnreadable(walk, cells)) walk.unread.push(...strip.numbers);
  else takeOther(walk, strip);
}

/** Whether no row of the section at hand has a designator yet; rows are looked at once. */
function isNew(walk: Walk, name: string): boolean {
  const { seen } = walk;
  for (const { cells, section } of walk.rows.slice(seen.rows)) {
    seen.rows++;
    for (const own of walk.readName(textIn(cells, "designator")) ?? []) seen.names.add(`${section}/${own}`);
  }
  return !seen.names.has(`${walk.pending?.name ?? walk.section}/${name}`);
}

/** A line of a table whose column of designators holds something that is none: it is kept, as unread. */
const isUnreadable = (walk: Walk, cells: readonly RowCell[]) =>
  walk.rows.length > 0 &&
  cells.length > 2 &&
  /\d/.test(textIn(cells, "designator")) &&
  textIn(cells, "description") + textIn(cells, "value") !== "";

/** A line that serves the page parts what stands above it from what follows, as a blank line does. */
function takePageLine(walk: Walk, strip: Strip): void {
  walk.furniture.push(...strip.numbers);
  walk.blank = true;
}

const OPEN_END = /\s*(?:,|&|\bthru|\bto|\band|-)\s*$/i;

/** Rows that begin with designators, and lines that go on with the list of designators above. */
function takeNamedRow(walk: Walk, strip: Strip, cells: readonly RowCell[]): boolean {
  const text = cells.length > 1 ? nameIn(cells) : textIn(cells, "designator");
  const above = walk.open ? textIn(walk.open.cells, "designator") : "";
  if (text !== "" && walk.open && goesOnWithList(above, text)) {
    extend(walk, strip, cells);
    return true;
  }
  if (text !== "" && (walk.readName(text) ?? walk.readName(text.replace(OPEN_END, "")))) {
    if (isPageOnly(strip)) return false;
    openRow(walk, strip, cells);
    return true;
  }
  if (text !== "" && isLettered(walk, text, cells)) {
    openRow(walk, strip, cells);
    return true;
  }
  const own = text === "" && walk.open ? sectionRow(above, cells) : null;
  if (own) openRow(walk, strip, own);
  return own !== null;
}

/** A part whose name only its column makes plain (LS, 1R1), or a bare number where all are, with more in its row. */
const isLettered = (walk: Walk, text: string, cells: readonly RowCell[]) =>
  walk.heads !== null && cells.length > 1 && (columnNamesOf(text) !== null || (walk.numbered && isKeyNumber(text)));

/** "  C12A  40 mf., 150 volts" under C12: a section of the can above on a line of its own. */
function sectionRow(above: string, cells: readonly RowCell[]): RowCell[] | null {
  const at = cells.findIndex((cell) => cell.role === "description");
  const text = cells[at]?.text ?? "";
  const found = designatorsAt(text);
  const name = found?.names.length === 1 ? found.names[0]! : "";
  const isSection = /[A-F]$/.test(name) && above.startsWith(name.slice(0, -1)) && found!.end < text.length;
  if (!isSection) return null;
  const rest = { ...cells[at]!, text: text.slice(found!.end).trim() };
  return [{ role: "designator", text: name, unit: null }, ...cells.map((cell, i) => (i === at ? rest : cell))];
}

function extend(walk: Walk, strip: Strip, cells: readonly RowCell[]): void {
  const open = walk.open!;
  open.cells = joinCells(open.cells, isBrokenUp(open, strip) ? cellsOfBroken(open.cells, strip) : cells);
  walk.open!.lines.push(...strip.numbers);
}

/** The cells of a broken-up entry: the first word with figures is its number to order by, the rest describes it. */
function cellsOfBroken(above: readonly RowCell[], strip: Strip): RowCell[] {
  return strip.pieces.map((piece, i): RowCell => {
    const isNumber = hasNoPartNumber(above) && !piece.text.includes(" ") && /\d/.test(piece.text);
    const isPrice = i > 0 && i === strip.pieces.length - 1;
    return { role: isNumber ? "partNumber" : isPrice ? "price" : "description", text: piece.text, unit: null };
  });
}

/** The rest of a description may hang under the part numbers: "10%, 1/2 W" below "Resistor, 1 meg,". */
function withRestDescribed({ open }: Walk, cells: readonly RowCell[]): readonly RowCell[] {
  const [cell, more] = cells;
  const hangs =
    cell?.role === "partNumber" && !more && !PART_NUMBER.test(cell.text) && isUnfinished(descriptionOf(open));
  return hangs ? [{ ...cell, role: "description" }] : cells;
}

const SECTION_NAME = /^(.*\d)([A-E])$/;

/** A lone letter under the section before it goes on with that can: "B" under C1A is C1B. */
function withLetterInFull({ open }: Walk, cells: readonly RowCell[]): readonly RowCell[] {
  const [, can, last] = SECTION_NAME.exec(open ? textIn(open.cells, "designator") : "") ?? [];
  const next = last && String.fromCharCode(last.charCodeAt(0) + 1);
  const isNext = ({ role, text }: RowCell) => role === "designator" && text === next;
  return can ? cells.map((cell) => (isNext(cell) ? { ...cell, text: can + next } : cell)) : cells;
}

const descriptionOf = (open: OpenRow | null) => (open ? textIn(open.cells, "description") : "");

/** "VI-3" alone or beside words of the page; beside a number it is a part and its value. */
const isPageOnly = ({ pieces: [first, ...more] }: Strip) =>
  [first!, ...more].every(({ text }) => isPageLine(text)) &&
  (more.length === 0 || more.some(({ text }) => /[a-z]/i.test(text)));

/** What stands in the column of designators; a dash says that there is none. */
const nameIn = (cells: readonly RowCell[]) => textIn(cells, "designator").replace(/^[-–—]+$/, "");

/** Whether a line without designators is the rest of the row above. */
function isRest(walk: Walk, strip: Strip, cells: readonly RowCell[]): boolean {
  const open = walk.open;
  if (!open || strip.form === "cells") return false;
  const isCounted = textIn(cells, "quantity") !== "" && (!walk.heads || textIn(open.cells, "quantity") !== "");
  if (nameIn(cells) !== "" || isCounted) return false;
  const lacks = hasNoPartNumber(open.cells) && textIn(cells, "partNumber") !== "";
  const text = textIn(cells, "description") || textIn(cells, "use");
  const above = textIn(open.cells, "description");
  const isOneCell = cells.length === 1 && readsOn(text);
  if (walk.blank || walk.apart) return isUnfinished(above) && (lacks || (isOneCell && walk.headed));
  const goesOn = isUnfinished(above) && readsOn(text);
  if (!goesOn && standsAsHeading(walk, strip) && cells.length === 1 && walk.heads && strip.form === "gaps")
    return false;
  const isOutside = !walk.heads && strip.pieces[0]!.start <= open.start;
  if (textIn(cells, "partNumber") === "") return !isOutside || isUnfinished(above) || readsOn(text);
  return lacks && (isUnfinished(above) || readsOn(text));
}

/** An entry with one cell a line: its first line holds nothing but the designator, the rest begin at the same place. */
const isBrokenUp = (open: OpenRow, strip: Strip) =>
  open.broken && strip.form === "gaps" && strip.pieces[0]!.start === 0;

const isRestOfBroken = (walk: Walk, strip: Strip) =>
  walk.open !== null &&
  !walk.blank &&
  !walk.apart &&
  isBrokenUp(walk.open, strip) &&
  !walk.readName(strip.pieces[0]!.text);

const hasNoPartNumber = (cells: readonly RowCell[]) => textIn(cells, "partNumber") === "";

/** A part without designator: a line of its own with a number to order it by, a count, a price, or a box to tick. */
function isNamelessPart(walk: Walk, strip: Strip, cells: readonly RowCell[], ticked: boolean): boolean {
  if (ticked) return true;
  const has = (role: RowCell["role"]) => textIn(cells, role) !== "";
  if (!has("description") && !has("value")) return false;
  const isListed = has("partNumber") || has("price") || has("quantity");
  if (walk.heads && !walk.heads.some((head) => head.role === "designator")) return isListed || strip.form === "cells";
  if (nameIn(cells) !== "") return false;
  return walk.heads
    ? isListed
    : (has("partNumber") || has("quantity")) && walk.rows.length > 0 && strip.pieces.length > 1;
}
