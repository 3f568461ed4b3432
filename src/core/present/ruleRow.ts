import type { Rule, RulesInForce, Settings } from "../rule.js";
import { wordFor } from "../rules/ruleWords.js";
import { readSetting, SETTINGS, type SettingRow } from "../rules/settings.js";
import type { Between } from "./column.js";
import { emptyRow } from "./sheet.js";
import type { ProjectsRow } from "./sheets/papers.js";
import { IN_ORDER, RULES_SHEET, type RulesRow, type SettingsRow, TOGETHER } from "./sheets/rulebook.js";

/** A rule as a row of Rules. */
export function rowOfRule(rule: Rule): RulesRow {
  const { action, technologies, cautions, driftLimit, leastVolts, wantVolts, ...plain } = rule;
  return {
    ...emptyRow(RULES_SHEET),
    ...plain,
    ...action,
    technologies: technologies.join(IN_ORDER.write) || null,
    cautions: cautions.join(TOGETHER.write) || null,
    driftLimit: textOf(driftLimit),
    leastVolts: textOf(leastVolts),
    wantVolts: textOf(wantVolts),
  };
}

const textOf = (value: number | string | null) => (value === null ? null : String(value));

/** "630" is a number, "film_floor_V" a name. */
const figureOrName = (text: string | null) => {
  const figure = Number(text);
  return text === null || Number.isNaN(figure) ? text : figure;
};

const namesIn = (text: string | null, between: Between) => (text ?? "").split(between.write).filter(Boolean);

/** The rule that a row of Rules states; null where the row is switched off or names neither a type nor a use. */
export function ruleOfRow(row: RulesRow): Rule | null {
  const { scope, id, off, trade, conservator, overhaul, technologies, cautions, ...plain } = row;
  if (scope === null || id === null || off) return null;
  return {
    ...plain,
    scope,
    id,
    label: row.label ?? id,
    action: { trade, conservator, overhaul },
    technologies: namesIn(technologies, IN_ORDER),
    cautions: namesIn(cautions, TOGETHER),
    driftLimit: row.driftLimit === "marked" ? "marked" : Number(row.driftLimit ?? Number.NaN) || null,
    leastVolts: figureOrName(row.leastVolts),
    wantVolts: figureOrName(row.wantVolts),
    because: row.because ?? "",
    source: row.source ?? "",
  };
}

/** A setting as a row of Settings, a choice in the words of the screen. */
export const rowOfSetting = ({ key, value, unit, meaning, choices }: SettingRow): SettingsRow => ({
  key,
  setting: choices ? wordFor(choices, String(value)) : String(value),
  unit,
  meaning,
});

/** The settings that rows of Settings state; what no row states, or states unreadably, keeps its default. */
export function settingsOfRows(rows: readonly SettingsRow[], defaults: Settings): Settings {
  const stated = rows.flatMap(({ key, setting }) => {
    const value = key === null || setting === null ? null : readSetting(key, setting);
    return value === null ? [] : [[key, value] as const];
  });
  return { ...defaults, ...Object.fromEntries(stated) };
}

/** All default settings as rows. */
export const defaultSettingRows = (): readonly SettingsRow[] => SETTINGS.map(rowOfSetting);

/** The columns of Projects that are a set's own settings, by their keys. */
export const OWN_SETTINGS = {
  howFar: "policy",
  voltsLabel: "line_design_V",
  voltsNow: "line_now_V",
  hertz: "line_hz",
} as const;

/** What a set's own row in Projects changes in the settings; a figure that can't be changes nothing. */
export function settingsOfProject(row: ProjectsRow): Settings {
  const own = Object.entries(OWN_SETTINGS).map(
    ([column, key]) => [key, row[column as keyof typeof OWN_SETTINGS]] as const,
  );
  const told = [
    ...own.filter(([key, value]) => value !== null && readSetting(key, String(value)) !== null),
    ["live_chassis", row.liveChassis ? "yes" : null],
    ["picture_tube", row.pictureTube ? "yes" : null],
    ["era", row.era],
  ];
  return Object.fromEntries(told.filter(([, value]) => value !== null)) as Settings;
}

/** The rules in force for one set: the rows of Rules and Settings, and what its own row changes. */
export function rulesInForce(
  ruleRows: readonly RulesRow[],
  settingRows: readonly SettingsRow[],
  project: ProjectsRow | null,
  defaults: RulesInForce,
): RulesInForce {
  const rules = ruleRows.flatMap((row) => ruleOfRow(row) ?? []);
  const settings = settingsOfRows(settingRows, defaults.settings);
  return {
    rules: ruleRows.length > 0 ? rules : defaults.rules,
    settings: project ? { ...settings, ...settingsOfProject(project) } : settings,
  };
}
