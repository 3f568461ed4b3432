import {
  defaultRules,
  defaultSettingRows,
  RULES_SHEET,
  type Rule,
  type RulesRow,
  rowOfRule,
  type SettingsRow,
} from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import type { RuleEdit } from "./rulesChange.js";
import { nothingToDo, type Step } from "./step.js";
import { addRows, cellIn, type RowCells, writtenRow } from "./writeSheet.js";

type Rules = typeof RULES_SHEET;

/** The edit that gives a row of Rules its default cells back; null where it has none of its own. */
export function restoreEdit(row: RulesRow): RuleEdit | null {
  const usual = defaultRules().find(({ scope, id }) => scope === row.scope && id === row.id);
  if (!usual || row.scope === null || row.id === null) return null;
  const cells = rowOfRule(usual);
  const changed = (Object.keys(RULES_SHEET.columns) as (keyof RulesRow)[]).filter(
    (key) => String(cells[key] ?? "") !== String(row[key] ?? ""),
  );
  if (changed.length === 0) return null;
  const written = Object.fromEntries(changed.map((key) => [key, cellIn(RULES_SHEET, key, cells)]));
  return { sheet: "rules", scope: row.scope, id: row.id, cells: written as RowCells<Rules> };
}

/** The edit that puts a setting back to its default; null where it stands there. */
export function restoreSetting({ key, setting }: SettingsRow): RuleEdit | null {
  const usual = defaultSettingRows().find((row) => row.key === key)?.setting ?? null;
  return key === null || usual === null || usual === setting ? null : { sheet: "settings", key, setting: usual };
}

/** The default rows that the sheet Rules lacks: their types and uses count as not known. */
export function missingRules(book: Book): readonly Rule[] {
  const there = new Set(valuesOf(book.rules).map(({ scope, id }) => `${scope} ${id}`));
  return book.rules ? defaultRules().filter(({ scope, id }) => !there.has(`${scope} ${id}`)) : [];
}

/** Puts default rows back below the others. */
export function putBackStep(book: Book, rules: readonly Rule[]): Step {
  if (!book.rules || rules.length === 0) return nothingToDo("No default row is missing");
  const rows = rules.map((rule) => writtenRow(RULES_SHEET, rowOfRule(rule)));
  const name = `Put back ${rules.map(({ label }) => label).join(", ")}`;
  return { name, changes: addRows(book.rules, RULES_SHEET, rows), overwrites: [], notes: [] };
}

/** A name as an id: letters, figures and strokes; a figure behind it where another row has it. */
function idFor(name: string, taken: readonly (string | null)[]): string {
  const plain =
    name
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "_")
      .replace(/^_+|_+$/g, "") || "row";
  const ids = [plain, ...taken.map((_, index) => `${plain}_${index + 2}`)];
  return ids.find((id) => !taken.includes(id)) ?? plain;
}

/**
 * Adds a row of the user's own, like another one. No part changes until one is given the new type or use.
 *
 * @param name What the type or the use is called.
 */
export function addRuleStep(book: Book, like: RulesRow, name: string): Step {
  const rows = valuesOf(book.rules);
  const label = name.trim();
  if (!book.rules || label === "") return nothingToDo("Give it a name");
  if (rows.some((row) => row.label?.toLowerCase() === label.toLowerCase()))
    return nothingToDo(`${label} is there already`);
  const id = idFor(
    label,
    rows.map((row) => row.id),
  );
  const row = writtenRow(RULES_SHEET, { ...like, id, label, off: null, source: "yours" });
  return { name: `Add ${label}`, changes: addRows(book.rules, RULES_SHEET, [row]), overwrites: [], notes: [] };
}
