import { PARTS_SHEET } from "../core/index.js";
import type { Written } from "../hosts/host.js";
import type { Book } from "./book.js";
import { isTheirs } from "./fill.js";
import type { ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Overwrite, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;
type Key = keyof Parts["columns"];

/**
 * Puts what the user says into one column of some rows: a use, a type, an action. It is theirs from then on.
 *
 * Rows that hold another value typed by the user are asked about.
 *
 * @param what How the step is called: "the use Plate load".
 */
export function sayStep(book: Book, rows: readonly ViewRow<Parts>[], key: Key, written: Written, what: string): Step {
  const { parts } = book;
  const changed = rows.filter(({ values }) => String(values[key] ?? "") !== String(written ?? ""));
  if (!parts || changed.length === 0) return nothingToDo("Nothing changes");
  const patches = changed.map(({ at }) => ({ at, cells: { [key]: written } as RowCells<Parts> }));
  const names = changed.length === 1 ? (changed[0]!.values.designator ?? "the row") : counted(changed.length, "row");
  return {
    name: `Give ${names} ${what}`,
    changes: patchRows(parts, patches),
    overwrites: changed.filter((row) => isTheirs(row, key)).map((row) => overwriteOf(book, row, key, written)),
    notes: [],
  };
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
