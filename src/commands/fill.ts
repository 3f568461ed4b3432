import { idsToGive, isOurs, PARTS_SHEET, type PartsRow, PROJECTS_SHEET, type WorkedOut } from "../core/index.js";
import type { Book } from "./book.js";
import { answerFormula, LIVE_KEYS, rulesFormula } from "./liveFormula.js";
import { targetOf, type View, type ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;
type Key = keyof Parts["columns"];

/** True for a cell of a worked-out column that the user typed over: it holds a value, and not one that we wrote. */
export function isTheirs(row: ViewRow<Parts>, key: Key): boolean {
  return row.values[key] !== null && row.formulas[key] === undefined && !isOurs(row.values, key);
}

/** The worked-out cells of a row that the user typed over. */
export const theirCells = (row: ViewRow<Parts>): readonly (keyof WorkedOut)[] =>
  LIVE_KEYS.filter((key) => isTheirs(row, key));

/** A row without our own answers, to be worked out anew; what the user typed over stays. */
export function unanswered(row: ViewRow<Parts>): PartsRow {
  const ours = LIVE_KEYS.filter((key) => !isTheirs(row, key)).map((key) => [key, null]);
  return { ...row.values, ...Object.fromEntries(ours) };
}

const isEmpty = (row: ViewRow<Parts>, key: Key) => row.values[key] === null && row.formulas[key] === undefined;

/** True for a worked-out cell that has no answer yet: not for one that was empty when it became a value. */
const isOpen = (row: ViewRow<Parts>, key: keyof WorkedOut) => isEmpty(row, key) && !isOurs(row.values, key);

/** True where a row has a live answer, or will have one, and lacks the rules it rests on. */
const lacksRules = (row: ViewRow<Parts>) =>
  isEmpty(row, "rules") && LIVE_KEYS.some((key) => row.formulas[key] !== undefined || isOpen(row, key));

/** Whether a row of Parts stands for a part: it names a designator, or at least a value. */
const isPart = (row: ViewRow<Parts>) => row.values.designator !== null || row.values.value !== null;

/** Rows of Parts with an empty worked-out cell or no id: inserted and copied rows, on the page above all. */
export function rowsToFill(view: View<Parts>): readonly ViewRow<Parts>[] {
  const without = new Set(idsOf(view).keys());
  return view.rows.filter((row, index) => {
    return isPart(row) && (without.has(index) || LIVE_KEYS.some((key) => isOpen(row, key)) || lacksRules(row));
  });
}

/** Ids to give, by the row's place in the view; each set counts for itself. */
function idsOf(view: View<Parts>): ReadonlyMap<number, string> {
  const sets = new Map<string, number[]>();
  view.rows.forEach(({ values }, index) => {
    const short = values.project ?? "A";
    sets.set(short, [...(sets.get(short) ?? []), index]);
  });
  const given = [...sets].flatMap(([short, members]) => {
    const ids = members.map((index) => view.rows[index]!.values.id);
    return [...idsToGive(short, ids)].map(([nth, id]) => [members[nth]!, id] as const);
  });
  return new Map(given);
}

/** The formulas of one row's worked-out columns, and of its rules. */
export function formulasOfRow(book: Book, parts: Pick<View<Parts>, "places">, at: number): RowCells<Parts> {
  const live = LIVE_KEYS.map((key) => [key, answerFormula(parts, key, at)] as const);
  const rules = rulesFormula(parts, targetOf(book.projects, PROJECTS_SHEET), at);
  return { ...Object.fromEntries(live), rules };
}

/**
 * Fills the worked-out columns of every row that lacks them with live formulas, and gives ids to rows without one.
 *
 * Cells that the user typed over stay.
 */
export function fillStep(book: Book): Step {
  const { parts } = book;
  const rows = parts ? rowsToFill(parts) : [];
  if (!parts || rows.length === 0) return nothingToDo("Every row is filled");
  const ids = idsOf(parts);
  const patches = rows.map((row) => {
    const cells = Object.entries(formulasOfRow(book, parts, row.at));
    const id = ids.get(parts.rows.indexOf(row));
    const empty = cells.filter(([key]) => (key === "rules" ? lacksRules(row) : isOpen(row, key as keyof WorkedOut)));
    return { at: row.at, cells: { ...Object.fromEntries(empty), ...(id ? { id } : {}) } as RowCells<Parts> };
  });
  const name = `Fill ${counted(rows.length, "row")}`;
  return { name, changes: patchRows(parts, patches), overwrites: [], notes: [] };
}

/** Puts our formula back into cells that the user typed over. */
export function takeBackStep(book: Book, at: number, keys: readonly Key[]): Step {
  const { parts } = book;
  if (!parts || keys.length === 0) return nothingToDo("Nothing here is typed over");
  const formulas = formulasOfRow(book, parts, at);
  const cells = Object.fromEntries(keys.map((key) => [key, formulas[key]])) as RowCells<Parts>;
  const heads = keys.map((key) => PARTS_SHEET.columns[key].head).join(", ");
  return { name: `Take back ${heads}`, changes: patchRows(parts, [{ at, cells }]), overwrites: [], notes: [] };
}
