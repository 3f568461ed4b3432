import {
  DEFAULTS_IN_FORCE,
  defaultRules,
  RULES_SHEET,
  type RulesRow,
  rowOfRule,
  rulesInForce,
  SETTINGS_SHEET,
  type SettingsRow,
} from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import { type Effect, effectOf, isChange } from "./effects.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

/** A change of one row of Rules or Settings, by key. */
export type RuleEdit =
  | {
      readonly sheet: "rules";
      readonly scope: string;
      readonly id: string;
      readonly cells: RowCells<typeof RULES_SHEET>;
    }
  | { readonly sheet: "settings"; readonly key: string; readonly setting: string };

function edited(book: Book, edit: RuleEdit): { rules: readonly RulesRow[]; settings: readonly SettingsRow[] } {
  const rules = valuesOf(book.rules);
  const settings = valuesOf(book.settings);
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
 * Which parts an edit changes, before it is written. A closed set keeps the rules it was closed with, and parts whose
 * answers are values keep those.
 */
export function effectsOf(book: Book, edit: RuleEdit): readonly Effect[] {
  const after = edited(book, edit);
  const sets = valuesOf(book.projects).filter(({ state }) => state !== "closed");
  return sets.flatMap((set) => {
    const now = rulesInForce(valuesOf(book.rules), valuesOf(book.settings), set, DEFAULTS_IN_FORCE);
    const inForce = rulesInForce(after.rules, after.settings, set, DEFAULTS_IN_FORCE);
    const rows = (book.parts?.rows ?? []).filter(
      ({ values, formulas }) => values.project === set.short && formulas.rules !== undefined,
    );
    return rows.map((row) => effectOf(row, now, { inForce })).filter(isChange);
  });
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

/** The edit that gives a row of Rules its default cells back; null where it has none of its own. */
export function restoreEdit(row: RulesRow): RuleEdit | null {
  const usual = defaultRules().find(({ scope, id }) => scope === row.scope && id === row.id);
  if (!usual || row.scope === null || row.id === null) return null;
  const cells = rowOfRule(usual);
  const changed = (Object.keys(RULES_SHEET.columns) as (keyof RulesRow)[]).filter(
    (key) => String(cells[key] ?? "") !== String(row[key] ?? ""),
  );
  if (changed.length === 0) return null;
  const written = Object.fromEntries(changed.map((key) => [key, cells[key] ?? ""]));
  return { sheet: "rules", scope: row.scope, id: row.id, cells: written as RowCells<typeof RULES_SHEET> };
}
