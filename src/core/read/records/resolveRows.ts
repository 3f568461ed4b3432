import { cellText, type ListRow, type Note, type Role, type RowCell } from "../layout/row.js";
import { type Circuits, circuitOf, circuitsOf } from "./circuits.js";
import { columnNamesOf, designatorsOf, isKeyNumber } from "./designators.js";
import { isDitto, withWordsAbove } from "./ditto.js";
import type { ListRecord } from "./listRecord.js";
import { baseOf, fullPartNumber } from "./partNumbers.js";
import { settleNames } from "./settleNames.js";

/** How a document repeats entries: what its notes say of blanks and dashes, and whether only within one part number family. */
type Habits = { readonly blanks: boolean; readonly dashes: boolean; readonly families: boolean };

/** What stands above, role by role, while a table is walked down. */
type Above = {
  cells: Map<Role, RowCell>;
  partNumber: string | null;
  base: string | null;
  letters: string;
};

const CARRIED: readonly Role[] = ["description", "tolerance", "rating", "watts", "volts"];
const SELECTED = /\b(?:s\.?i\.?t|s\.?a\.?t|s\.?o\.?t|nom|nominal|select|selected|see (?:table|chart|note))\b/i;

/** The rows of a document with nothing left to be taken from the row above. */
export function resolveRows(
  rows: readonly ListRow[],
  notes: readonly Note[],
  readName: (text: string) => readonly string[] | null = designatorsOf,
): ListRecord[] {
  const said = notes.map((note) => note.text).join(" ");
  const records: ListRecord[] = [];
  for (const table of new Set(rows.map((row) => row.table))) {
    const own = rows.filter((row) => row.table === table);
    const habits = habitsOf(own, said);
    const above: Above = { cells: new Map(), partNumber: null, base: null, letters: "" };
    for (const row of own) records.push(resolveRow(row, above, habits, readName));
  }
  return fillSections(settleNames(records), circuitsOf(notes));
}

const FEWEST_BLANK = 0.2;

/** Blanks repeat where a note says so, or where a table without marks leaves its description column blank again and again. */
function habitsOf(rows: readonly ListRow[], said: string): Habits {
  const speaks = /\b(?:repeats?|same as above|as above)\b/i.test(said);
  const blanks = speaks && /\bblanks?\b/i.test(said);
  const dashes = speaks && /\bdash\b/i.test(said);
  const families = speaks && /\bfamily\b/i.test(said);
  const hasMarks = rows.some((row) => row.cells.some((cell) => isDitto(cell.text, dashes)));
  const named = rows.filter((row) => cellText(row, "designator") !== "");
  const described = named.some(
    (row) => cellText(row, "description") !== "" && row.cells.some((cell) => cell.role === "partNumber"),
  );
  const bare = named.filter((row) => cellText(row, "description") === "").length;
  return {
    blanks: blanks || (!hasMarks && described && bare >= named.length * FEWEST_BLANK && bare > 0),
    dashes,
    families,
  };
}

function resolveRow(
  row: ListRow,
  above: Above,
  habits: Habits,
  readName: (text: string) => readonly string[] | null,
): ListRecord {
  const names = namesOf(row, readName);
  const letters = names[0]?.replace(/[-.\d].*$/, "") ?? "";
  const printed = cellText(row, "partNumber");
  const repeatsNumber = isDitto(printed, habits.dashes) || (printed === "" && isBare(row));
  const partNumber = repeatsNumber ? above.partNumber : printed === "" ? null : fullPartNumber(printed, above.base);
  const base = partNumber ? baseOf(partNumber) : null;
  const isStranger = letters !== above.letters || (habits.families && base !== null && base !== above.base);
  const source = isStranger ? new Map<Role, RowCell>() : above.cells;
  const { cells, borrowed } = fill(row, source, habits, partNumber !== null && partNumber === above.partNumber);
  remember(above, cells, isStranger, letters, partNumber, base);
  return { ...row, cells, names, partNumber, borrowed };
}

/** The names of a row; a column that the list is named by may hold only letters (RX) or a number (14). */
function namesOf(row: ListRow, readName: (text: string) => readonly string[] | null): readonly string[] {
  const text = cellText(row, "designator").trim();
  if (text === "") return [];
  const names = readName(text) ?? columnNamesOf(text) ?? (isKeyNumber(text) ? [text] : []);
  const except = /\bexcept\s+([^)]*)/i.exec(cellText(row, "description"));
  const left = except ? readName(except[1]!) : null;
  return left ? names.filter((name) => !left.includes(name)) : names;
}

const isBare = (row: ListRow) => row.cells.every((cell) => cell.role === "designator" || cell.role === "section");

type Filled = { readonly cells: RowCell[]; readonly borrowed: Set<Role> };

function fill(row: ListRow, above: ReadonlyMap<Role, RowCell>, habits: Habits, sameNumber: boolean): Filled {
  const borrowed = new Set<Role>();
  const cells = row.cells.flatMap((cell): RowCell[] => {
    const source = above.get(cell.role);
    if (isDitto(cell.text, habits.dashes)) {
      if (!source) return [];
      borrowed.add(cell.role);
      return [source];
    }
    const mended = source && cell.role === "description" ? withWordsAbove(cell.text, source.text) : null;
    if (mended) borrowed.add(cell.role);
    return [mended ? { ...cell, text: mended } : cell];
  });
  if (habits.blanks) addBlanks(row, above, sameNumber, cells, borrowed);
  return { cells, borrowed };
}

/** Blank cells that repeat: never on a selected part but for its description; the value with the whole row or its part number. */
function addBlanks(
  row: ListRow,
  above: ReadonlyMap<Role, RowCell>,
  sameNumber: boolean,
  cells: RowCell[],
  borrowed: Set<Role>,
): void {
  const selected = SELECTED.test(cellText(row, "value")) || SELECTED.test(cellText(row, "description"));
  const onlyNumber =
    !isBare(row) && ["value", "tolerance", "rating"].every((role) => cellText(row, role as Role) === "");
  const shy = selected || (onlyNumber && !sameNumber);
  const roles: Role[] = shy
    ? ["description"]
    : isBare(row) || (sameNumber && onlyNumber)
      ? [...CARRIED, "value"]
      : [...CARRIED];
  for (const role of roles) {
    const source = above.get(role);
    if (!source || cells.some((cell) => cell.role === role)) continue;
    cells.push(source);
    borrowed.add(role);
  }
}

function remember(
  above: Above,
  cells: readonly RowCell[],
  isStranger: boolean,
  letters: string,
  number: string | null,
  base: string | null,
): void {
  if (isStranger) above.cells = new Map();
  above.cells.delete("value");
  for (const cell of cells) if (!SELECTED.test(cell.text)) above.cells.set(cell.role, cell);
  above.letters = letters;
  above.partNumber = number ?? above.partNumber;
  above.base = base ?? above.base;
}

/** A section written beside the first row of a group holds until the next one, also across a page. */
function fillSections(records: readonly ListRecord[], circuits: Circuits): ListRecord[] {
  let current: string | null = null;
  return records.map((record) => {
    const own = record.cells
      .filter((cell) => cell.role === "section" && !/^[A-Z]\d{1,2}$/.test(cell.text))
      .map((cell) => cell.text)
      .join(" | ");
    if (own !== "" && /^[A-Za-z]{2}/.test(own)) current = own;
    const circuit = circuitOf(record.names, circuits);
    return { ...record, section: own || current || record.section || circuit.section, circuits: circuit.count };
  });
}
