import type { Rule, Settings } from "../rule.js";
import { defaultRules } from "./defaultRules.js";

/** Columns of default rows whose figure is a setting, in percent; `sign` is -1 where the column counts below nominal. */
const FROM_SETTINGS: readonly {
  readonly row: string;
  readonly column: "low" | "high" | "driftLimit";
  readonly key: string;
  readonly sign: 1 | -1;
}[] = [
  { row: "class carbon_comp", column: "driftLimit", key: "r_drift_general_pct", sign: 1 },
  { row: "class elec_bias", column: "high", key: "bias_excess_pct", sign: 1 },
  { row: "role cathode_bypass", column: "high", key: "bias_excess_pct", sign: 1 },
  { row: "role first_filter", column: "high", key: "elec_first_excess_pct", sign: 1 },
  { row: "role first_filter", column: "low", key: "elec_under_pct", sign: -1 },
  { row: "role later_filter", column: "high", key: "elec_later_excess_pct", sign: 1 },
  { row: "role later_filter", column: "low", key: "elec_under_pct", sign: -1 },
];

/**
 * A row with the figures that settings give it; a column that the user has edited in the row itself outranks the setting.
 *
 * @example withSettings(laterFilter, { ...settings, elec_later_excess_pct: 50 }).high // 0.5
 */
export function withSettings(row: Rule, settings: Settings): Rule {
  const name = `${row.scope} ${row.id}`;
  const fromSettings = FROM_SETTINGS.filter((each) => each.row === name);
  if (fromSettings.length === 0) return row;
  const usual = defaultRules().find(({ scope, id }) => scope === row.scope && id === row.id);
  const columns = fromSettings.flatMap(({ column, key, sign }) => {
    const percent = settings[key];
    return typeof percent === "number" && row[column] === usual?.[column] ? [[column, (sign * percent) / 100]] : [];
  });
  return columns.length > 0 ? { ...row, ...Object.fromEntries(columns) } : row;
}
