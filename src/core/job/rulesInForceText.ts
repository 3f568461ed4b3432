import { rulesInForce } from "../present/ruleRow.js";
import { rulesText } from "../present/rulesText.js";
import { rowsOf, type Sheet } from "../present/sheet.js";
import { PROJECTS_SHEET } from "../present/sheets/papers.js";
import { RULES_SHEET, SETTINGS_SHEET } from "../present/sheets/rulebook.js";
import { DEFAULTS_IN_FORCE } from "../rules/defaultRules.js";
import type { Cell } from "../table.js";

/**
 * The rules in force as one text, from the cells of the sheets Rules and Settings, each with its heads, and a set's own row.
 *
 * Empty sheets mean the defaults.
 */
export function rulesInForceText(
  rules: readonly (readonly Cell[])[],
  settings: readonly (readonly Cell[])[],
  heads: readonly Cell[],
  project: readonly Cell[],
): string {
  const ruleRows = rowsBelow(RULES_SHEET, rules);
  const settingRows = rowsBelow(SETTINGS_SHEET, settings);
  const own = rowsBelow(PROJECTS_SHEET, [heads, project])[0] ?? null;
  return rulesText(rulesInForce(ruleRows, settingRows, own, DEFAULTS_IN_FORCE));
}

/** The filled rows of a sheet below its heads. */
function rowsBelow<S extends Sheet>(sheet: S, cells: readonly (readonly Cell[])[]) {
  const [heads, ...body] = cells;
  const filled = body.filter((row) => row.some((cell) => cell !== null && cell !== ""));
  return rowsOf(sheet, { heads: (heads ?? []).map((head) => String(head ?? "")), rows: filled });
}
