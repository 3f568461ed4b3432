import {
  DEFAULTS_IN_FORCE,
  defaultRules,
  PartsError,
  type PartsRow,
  RULES_SHEET,
  type RulesInForce,
  type RulesRow,
  rowOfRule,
  rulesInForce,
  SETTINGS_SHEET,
  type SettingsRow,
  workOut,
} from "../core/index.js";
import { type Book, projectOf, valuesOf } from "./book.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

/** One part that an edited rule changes: what its row says now, and what it will say. */
export type RuleEffect = { readonly row: PartsRow; readonly was: string; readonly will: string };

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

const inOneLine = (row: PartsRow, inForce: RulesInForce): string => {
  try {
    const blank = { ...row, verdict: null, action: null };
    const { action, newValue, newWatts, newVolts, newType } = workOut(blank, inForce);
    const figures = [newValue, newWatts && `${newWatts} W`, newVolts && `${newVolts} V`, newType];
    return [`${action}:`, ...figures].filter(Boolean).join(" ");
  } catch (error) {
    if (error instanceof PartsError) return error.message;
    throw error;
  }
};

/** Which parts an edit changes, before it is written. */
export function effectsOf(book: Book, edit: RuleEdit): readonly RuleEffect[] {
  const after = edited(book, edit);
  const sets = [...new Set(valuesOf(book.parts).map(({ project }) => project))];
  return sets.flatMap((short) => {
    const set = projectOf(book, short);
    const now = rulesInForce(valuesOf(book.rules), valuesOf(book.settings), set, DEFAULTS_IN_FORCE);
    const then = rulesInForce(after.rules, after.settings, set, DEFAULTS_IN_FORCE);
    const rows = valuesOf(book.parts).filter(({ project }) => project === short);
    return rows.flatMap((row) => {
      const [was, will] = [inOneLine(row, now), inOneLine(row, then)];
      return was === will ? [] : [{ row, was, will }];
    });
  });
}

/** Writes an edit to Rules or Settings; its name says how many parts change. */
export function ruleEditStep(book: Book, edit: RuleEdit, effects: readonly RuleEffect[]): Step {
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
