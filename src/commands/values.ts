import {
  attempt,
  headsOf,
  isOurs,
  NO_ANSWER,
  type Origin,
  originText,
  PARTS_SHEET,
  type PartsRow,
  type RulesInForce,
  readFrom,
  workOut,
  writeFrom,
} from "../core/index.js";
import type { Written } from "../hosts/host.js";
import type { Book } from "./book.js";
import { formulasOfRow, unanswered } from "./fill.js";
import { LIVE_KEYS } from "./liveFormula.js";
import type { View, ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

type Parts = typeof PARTS_SHEET;
type Key = (typeof LIVE_KEYS)[number];

const HEADS = headsOf(PARTS_SHEET);

/** Answers of ours as values, and in `from` what we wrote, so that a cell typed over later is still known as the user's. */
function asValues(answers: Partial<PartsRow>, keys: readonly Key[], from: string | null): RowCells<Parts> {
  const cells = keys.map((key) => [key, (answers[key] ?? "") as Written] as const);
  const origins = keys.map((key): Origin => {
    const text = originText(String(answers[key] ?? NO_ANSWER));
    return { head: PARTS_SHEET.columns[key].head, text, from: "default", at: "" };
  });
  return { ...Object.fromEntries(cells), from: writeFrom([...without(keys, from), ...origins]) };
}

const without = (keys: readonly Key[], from: string | null): readonly Origin[] => {
  const heads = keys.map((key) => PARTS_SHEET.columns[key].head);
  return readFrom(from, HEADS).filter(({ head }) => !heads.includes(head));
};

/**
 * Turns live formulas of some rows into their values: the file then opens anywhere. Once no answer of a row is live, its
 * rules stay as they are, too.
 *
 * @param keys The columns to turn; all of them where none are named.
 */
export function valuesStep(
  parts: View<Parts>,
  rows: readonly ViewRow<Parts>[],
  keys: readonly Key[] = LIVE_KEYS,
): Step {
  const patches = rows.flatMap(({ at, values, formulas }) => {
    const live = keys.filter((key) => formulas[key] !== undefined);
    const isLast = LIVE_KEYS.every((key) => formulas[key] === undefined || live.includes(key));
    const rules = isLast && formulas.rules !== undefined ? { rules: values.rules ?? "" } : {};
    return live.length === 0 ? [] : [{ at, cells: { ...asValues(values, live, values.from), ...rules } }];
  });
  if (patches.length === 0) return nothingToDo("Nothing here is live");
  const name = `Turn ${counted(patches.length, "row")} into values`;
  return { name, changes: patchRows(parts, patches), overwrites: [], notes: [] };
}

/** The answers of ours that stand as values in a row. */
const valueKeys = (row: ViewRow<Parts>): readonly Key[] =>
  LIVE_KEYS.filter((key) => row.formulas[key] === undefined && isOurs(row.values, key));

/** Puts live formulas back where values of ours stand; what the user typed over stays. */
export function liveStep(book: Book, rows: readonly ViewRow<Parts>[]): Step {
  const { parts } = book;
  const turned = rows.filter((row) => valueKeys(row).length > 0);
  if (!parts || turned.length === 0) return nothingToDo("Nothing here stands as a value of ours");
  const patches = turned.map((row) => {
    const keys = valueKeys(row);
    const formulas = formulasOfRow(book, parts, row.at);
    const cells = Object.fromEntries(["rules" as const, ...keys].map((key) => [key, formulas[key]]));
    return { at: row.at, cells: { ...cells, from: writeFrom(without(LIVE_KEYS, row.values.from)) } as RowCells<Parts> };
  });
  const name = `Make ${counted(turned.length, "row")} live again`;
  return { name, changes: patchRows(parts, patches), overwrites: [], notes: [] };
}

/** The cells of a row whose answers stand as values, worked out anew; nothing for a row that is live. */
export function renewed(row: ViewRow<Parts>, answers: Partial<PartsRow>): RowCells<Parts> {
  const isValues = LIVE_KEYS.every((key) => row.formulas[key] === undefined) && valueKeys(row).length > 0;
  return isValues ? asValues(answers, valueKeys(row), row.values.from) : {};
}

/** The same, worked out from what is said of the row; nothing where it cannot be worked out. */
export function renewedBy(row: ViewRow<Parts>, said: Partial<PartsRow>, inForce: RulesInForce): RowCells<Parts> {
  return attempt(
    () => renewed(row, workOut({ ...unanswered(row), ...said }, inForce)),
    () => ({}),
  );
}
