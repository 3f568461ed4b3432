import { PARTS_SHEET, type PartsRow } from "../core/index.js";
import type { Written } from "../hosts/host.js";
import { type Book, rulesOf } from "./book.js";
import { isTheirs, takeBackStep } from "./fill.js";
import { withOtherRows } from "./once.js";
import type { ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Overwrite, type Step } from "./step.js";
import { renewedBy } from "./values.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;
type Key = keyof Parts["columns"];

/** What is said of a part and not of a list's line: it holds for the same part's rows in other lists. */
const OF_THE_PART: readonly Key[] = ["usedAs", "action"];

/**
 * Puts what the user says into one column of some rows: a use, a type, an action. It is theirs from then on.
 *
 * A use or an action holds for the same part in other lists too. Rows that hold another value typed by the user are asked about.
 *
 * @param what How the step is called: "the use Plate load".
 */
export function sayStep(book: Book, rows: readonly ViewRow<Parts>[], key: Key, written: Written, what: string): Step {
  const { parts } = book;
  const all = OF_THE_PART.includes(key) ? withOtherRows(book, rows) : rows;
  const changed = all.filter(({ values }) => String(values[key] ?? "") !== String(written ?? ""));
  if (!parts || changed.length === 0) return nothingToDo("Nothing changes");
  const patches = changed.map((row) => ({ at: row.at, cells: saidCells(book, row, key, written) }));
  const names = rows.length === 1 ? (rows[0]!.values.designator ?? "the row") : counted(changed.length, "row");
  return {
    name: `Give ${names} ${what}`,
    changes: patchRows(parts, patches),
    overwrites: changed.filter((row) => isTheirs(row, key)).map((row) => overwriteOf(book, row, key, written)),
    notes: [],
  };
}

/** What is said, and the answers that rest on it where they stand as values. */
function saidCells(book: Book, row: ViewRow<Parts>, key: Key, written: Written): RowCells<Parts> {
  const said = { [key]: written === "" ? null : written } as Partial<PartsRow>;
  return { ...renewedBy(row, said, rulesOf(book, row.values.project)), [key]: written };
}

/** Takes back what the user typed over in a row: our own answer stands there again, and at the same part's other rows. */
export function unsayStep(book: Book, row: ViewRow<Parts>, key: Key): Step {
  const rows = OF_THE_PART.includes(key) ? withOtherRows(book, [row]) : [row];
  const steps = rows.filter((each) => isTheirs(each, key)).map(({ at }) => takeBackStep(book, at, [key]));
  const [first] = steps;
  return first
    ? { ...first, changes: steps.flatMap(({ changes }) => changes) }
    : nothingToDo("Nothing here is typed over");
}

function overwriteOf(book: Book, row: ViewRow<Parts>, key: Key, written: Written): Overwrite {
  const column = book.parts?.places[key] ?? 0;
  return {
    place: { sheet: book.parts?.name ?? "", row: row.at, column },
    row: row.values.designator ?? `row ${row.at + 1}`,
    head: PARTS_SHEET.columns[key].head,
    was: String(row.values[key] ?? ""),
    will: String(written),
  };
}
