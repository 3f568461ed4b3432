import {
  type CorrectedCells,
  DOCUMENTS_SHEET,
  type DocumentReading,
  emptyRow,
  LINES_SHEET,
  nextIds,
  PARTS_SHEET,
  type Part,
  PROJECTS_SHEET,
  partKey,
  readAgain,
  rowOfPart,
  samePart,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import { type Book, projectOf, rulesOf, valuesOf } from "./book.js";
import { formulasOfRow } from "./fill.js";
import { targetOf } from "./openSheet.js";
import { addProjects, missingSheets } from "./startBook.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { addRows, patchRows, type RowCells, rowsInPlace, writtenRow } from "./writeSheet.js";

/** Cells of parts that a person has corrected, by the part's place in the reading. */
export type Corrected = ReadonlyMap<number, CorrectedCells>;

/** Where a list belongs: the set's short name and full name, and the document's name. */
export type ListTarget = {
  readonly short: string;
  readonly set: string;
  readonly document: string;
  readonly card?: { readonly liveChassis?: boolean; readonly pictureTube?: boolean; readonly era?: string };
};

/**
 * Writes a list that was understood to the sheets: its set, its document, its lines, and a row for each part with live formulas.
 *
 * A list read again finds its rows by document, section and designator: their ids, readings and typed cells stay.
 *
 * @param corrected What a person read otherwise on the page: these cells count as typed over.
 */
export function bringInListStep(
  book: Book,
  reading: DocumentReading,
  target: ListTarget,
  corrected: Corrected = new Map(),
): Step {
  if (reading.parts.length === 0) return nothingToDo("No parts were understood");
  const { known, fresh } = sorted(book, reading, target, corrected);
  const changes = [
    ...missingSheets(book),
    ...addProjects(book, projectOf(book, target.short) ? [] : [newProject(target)]),
    ...documentChanges(book, reading, target),
    ...known,
    ...freshRows(book, fresh, target),
    ...lineChanges(book, reading, target),
  ];
  const unclear = reading.lines.filter((line) => line.became === "unclear").length;
  return {
    name: nameOf(fresh.length, reading.parts.length - fresh.length),
    changes,
    overwrites: [],
    notes: [
      ...(unclear > 0 ? [`${counted(unclear, "line")} stayed unclear; they stand in Lines.`] : []),
      ...notTold(reading.numbersWithoutValue),
    ],
  };
}

/** What `bringInListStep` will do, in the words of its name, without preparing it. */
export function bringInListName(book: Book, reading: DocumentReading, target: ListTarget): string {
  const standing = standingParts(book);
  const again = reading.parts.filter((part) => standing.has(keyIn(target, part))).length;
  return nameOf(reading.parts.length - again, again);
}

const nameOf = (fresh: number, again: number) =>
  `Write ${counted(fresh, "part")} to the sheet${again > 0 ? `, ${again} read again` : ""}`;

const standingParts = (book: Book) => new Map((book.parts?.rows ?? []).map((row) => [samePart(row.values), row]));

const keyIn = ({ short, document }: ListTarget, part: Part) => samePart(partKey({ ...part, document }, short));

/** What is said of part numbers that stand in place of values and that no table tells. */
export function notTold(numbers: readonly string[]): readonly string[] {
  if (numbers.length === 0) return [];
  const first = numbers.slice(0, MOST_NAMED).join(", ");
  const more = numbers.length > MOST_NAMED ? ` and ${numbers.length - MOST_NAMED} more` : "";
  return [`Your part numbers do not tell what ${first}${more} ${numbers.length === 1 ? "is" : "are"}.`];
}

/** As many part numbers as are named in one sentence. */
const MOST_NAMED = 6;

const newProject = ({ short, set, card = {} }: ListTarget) => ({
  ...emptyRow(PROJECTS_SHEET),
  short,
  name: set,
  howFar: "trade" as const,
  state: "open" as const,
  era: card.era ?? null,
  liveChassis: card.liveChassis ?? null,
  pictureTube: card.pictureTube ?? null,
});

/** Parts that stand in the sheet already, as changes of their rows, and those that are new. */
function sorted(book: Book, reading: DocumentReading, target: ListTarget, corrected: Corrected) {
  const rules = rulesOf(book, target.short).rules;
  const standing = standingParts(book);
  const fresh: Fresh[] = [];
  const patches = reading.parts.flatMap((part, index) => {
    const typed = emptied(corrected.get(index) ?? {});
    const there = standing.get(keyIn(target, part));
    if (!there) {
      fresh.push({ part, typed });
      return [];
    }
    const row = rowOfPart({ ...part, document: target.document }, target.short, rules);
    return [{ at: there.at, cells: { ...readAgain(there.values, row), ...typed } }];
  });
  return { known: book.parts ? patchRows(book.parts, patches) : [], fresh };
}

/** A part that has no row yet, and the cells that a person corrected. */
type Fresh = { readonly part: Part; readonly typed: RowCells<typeof PARTS_SHEET> };

const emptied = (cells: CorrectedCells): RowCells<typeof PARTS_SHEET> =>
  Object.fromEntries(Object.entries(cells).map(([key, cell]) => [key, cell ?? ""]));

function freshRows(book: Book, fresh: readonly Fresh[], target: ListTarget): readonly Change[] {
  if (fresh.length === 0) return [];
  const parts = fresh.map(({ part }) => part);
  const rules = rulesOf(book, target.short).rules;
  const place = targetOf(book.parts, PARTS_SHEET);
  const rows = withIds(book, parts, target.short).map((part, index) => ({
    ...writtenRow(PARTS_SHEET, rowOfPart({ ...part, document: target.document }, target.short, rules)),
    ...fresh[index]!.typed,
    ...formulasOfRow(book, place, place.end + index),
  }));
  return addRows(book.parts, PARTS_SHEET, rows);
}

/** Sections of one can stand next to each other and share a number. */
function withIds(book: Book, parts: readonly Part[], short: string): readonly Part[] {
  const families: Part[][] = [];
  for (const part of parts) {
    const last = families.at(-1)?.[0];
    const isSame = last && part.parent !== null && part.parent === last.parent && part.section === last.section;
    if (isSame) families.at(-1)!.push(part);
    else families.push([part]);
  }
  const taken = valuesOf(book.parts).flatMap(({ id }) => id ?? []);
  const ids = nextIds(
    short,
    taken,
    families.map((family) => family.length),
  );
  return families.flatMap((family, index) => family.map((part, nth) => ({ ...part, id: ids[index]![nth]! })));
}

function documentChanges(book: Book, reading: DocumentReading, target: ListTarget): readonly Change[] {
  const cells = {
    project: target.short,
    document: target.document,
    capitalM: reading.capitalM,
    notes: reading.notes.join(" / ") || null,
    questions: reading.questions.join(" / ") || null,
  };
  const there = book.documents?.rows.find(
    ({ values }) => values.project === target.short && values.document === target.document,
  );
  if (book.documents && there) return patchRows(book.documents, [{ at: there.at, cells }]);
  return addRows(book.documents, DOCUMENTS_SHEET, [{ ...cells, title: target.set }]);
}

/** Lines of a document that is read again take the place of its old ones; what is left over is emptied. */
function lineChanges(book: Book, reading: DocumentReading, target: ListTarget): readonly Change[] {
  const rows = reading.lines.map((line) => ({
    project: target.short,
    document: target.document,
    line: line.number,
    text: line.text,
    became: line.became,
    parts: line.parts.join(" ") || "",
    reason: line.reason ?? "",
  }));
  const old = (book.lines?.rows ?? []).filter(
    ({ values }) => values.project === target.short && values.document === target.document,
  );
  return rowsInPlace(book.lines, LINES_SHEET, old, rows);
}
