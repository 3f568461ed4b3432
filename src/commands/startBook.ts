import {
  DERATING_POLICIES,
  DERATING_SHEET,
  defaultRules,
  defaultSettingRows,
  PROJECTS_SHEET,
  type ProjectsRow,
  READINGS_SHEET,
  RULES_SHEET,
  rowOfRule,
  SETTINGS_SHEET,
  SHEETS,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import type { Book } from "./book.js";
import { rulesInForceFormula } from "./liveFormula.js";
import { targetOf } from "./openSheet.js";
import { addRows, newSheet, writtenRow } from "./writeSheet.js";

const newTab = (sheet: string): Change => ({ kind: "sheet", sheet });

/**
 * The sheets that any job rests on, where the workbook lacks them: Rules, Settings and Derating with their defaults, an empty log. In a new
 * workbook all tabs stand in the order of the job.
 */
export function missingSheets(book: Book): readonly Change[] {
  const rules = () => defaultRules().map((rule) => writtenRow(RULES_SHEET, rowOfRule(rule)));
  const settings = () => defaultSettingRows().map((row) => writtenRow(SETTINGS_SHEET, row));
  const derating = () => DERATING_POLICIES.map((row) => writtenRow(DERATING_SHEET, row));
  return [
    ...(Object.values(book).every((view) => view === null) ? SHEETS.map(({ name }) => newTab(name)) : []),
    ...(book.rules ? [] : newSheet(RULES_SHEET, rules())),
    ...(book.settings ? [] : newSheet(SETTINGS_SHEET, settings())),
    ...(book.derating ? [] : newSheet(DERATING_SHEET, derating())),
    ...(book.readings ? [] : newSheet(READINGS_SHEET, [])),
  ];
}

/** New sets as rows of Projects, each with the formula that writes its rules. */
export function addProjects(book: Book, projects: readonly ProjectsRow[]): readonly Change[] {
  if (projects.length === 0) return [];
  const target = targetOf(book.projects, PROJECTS_SHEET);
  const sheets = { rules: targetOf(book.rules, RULES_SHEET), settings: targetOf(book.settings, SETTINGS_SHEET) };
  const rows = projects.map((project, index) => ({
    ...writtenRow(PROJECTS_SHEET, project),
    rules: rulesInForceFormula(target, sheets, target.end + index),
  }));
  return addRows(book.projects, PROJECTS_SHEET, rows);
}
