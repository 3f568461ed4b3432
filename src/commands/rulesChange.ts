import {
  DEFAULTS_IN_FORCE,
  RULES_SHEET,
  type RulesRow,
  rulesInForce,
  SETTINGS_SHEET,
  type SettingsRow,
} from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import { type Effect, effectOf, isChange } from "./effects.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

/** Rules and Settings as rows. */
export type RuleBook = { readonly rules: readonly RulesRow[]; readonly settings: readonly SettingsRow[] };

/** Rules and Settings of the open workbook. */
export const ruleBookOf = (book: Book): RuleBook => ({
  rules: valuesOf(book.rules),
  settings: valuesOf(book.settings),
});

/** A change of one row of Rules or Settings, by key. */
export type RuleEdit =
  | {
      readonly sheet: "rules";
      readonly scope: string;
      readonly id: string;
      readonly cells: RowCells<typeof RULES_SHEET>;
    }
  | { readonly sheet: "settings"; readonly key: string; readonly setting: string };

function edited({ rules, settings }: RuleBook, edit: RuleEdit): RuleBook {
  if (edit.sheet === "settings") {
    const changed = settings.map((row) => (row.key === edit.key ? { ...row, setting: edit.setting } : row));
    return { rules, settings: changed };
  }
  const read = Object.fromEntries(
    Object.entries(edit.cells).map(([key, cell]) => [
      key,
      RULES_SHEET.columns[key as keyof RulesRow].read(cell === "" ? null : (cell as string | number)),
    ]),
  );
  const isIt = (row: RulesRow) => row.scope === edit.scope && row.id === edit.id;
  return { rules: rules.map((row) => (isIt(row) ? { ...row, ...read } : row)), settings };
}

/**
 * Which parts change from one state of Rules and Settings to another. A closed set keeps the rules it was closed with, and
 * parts whose answers are values keep those.
 */
export function effectsBetween(book: Book, now: RuleBook, then: RuleBook): readonly Effect[] {
  const sets = valuesOf(book.projects).filter(({ state }) => state !== "closed");
  return sets.flatMap((set) => {
    const inForce = rulesInForce(now.rules, now.settings, set, DEFAULTS_IN_FORCE);
    const after = rulesInForce(then.rules, then.settings, set, DEFAULTS_IN_FORCE);
    const rows = (book.parts?.rows ?? []).filter(
      ({ values, formulas }) => values.project === set.short && formulas.rules !== undefined,
    );
    return rows.map((row) => effectOf(row, inForce, { inForce: after })).filter(isChange);
  });
}

/** Which parts an edit changes, before it is written. */
export function effectsOf(book: Book, edit: RuleEdit): readonly Effect[] {
  const now = ruleBookOf(book);
  return effectsBetween(book, now, edited(now, edit));
}

/** Writes an edit to Rules or Settings; its name says how many parts change. */
export function ruleEditStep(book: Book, edit: RuleEdit, effects: readonly Effect[]): Step {
  const name = `Change it: ${counted(effects.length, "part")} ${effects.length === 1 ? "changes" : "change"}`;
  const nothing = { overwrites: [], notes: [] };
  if (edit.sheet === "settings") {
    const row = book.settings?.rows.find(({ values }) => values.key === edit.key);
    if (!book.settings || !row) return nothingToDo(`${SETTINGS_SHEET.name} has no row ${edit.key}`);
    return { name, changes: patchRows(book.settings, [{ at: row.at, cells: { setting: edit.setting } }]), ...nothing };
  }
  const row = book.rules?.rows.find(({ values }) => values.scope === edit.scope && values.id === edit.id);
  if (!book.rules || !row) return nothingToDo(`${RULES_SHEET.name} has no row ${edit.id}`);
  return { name, changes: patchRows(book.rules, [{ at: row.at, cells: edit.cells }]), ...nothing };
}
