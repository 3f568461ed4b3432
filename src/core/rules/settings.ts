/** TABLE: settings: the figures and choices that hold for all rows. */
import type { Settings } from "../rule.js";

/** One setting as its sheet shows it; percents and volts are in the unit named, as the user types them. */
export type SettingRow = {
  readonly key: string;
  readonly value: number | string;
  readonly unit: string;
  readonly meaning: string;
};

/** The settings with their defaults. Source: common practice, for the user to edit. */
export const SETTINGS: readonly SettingRow[] = [
  {
    key: "line_design_V",
    value: 117,
    unit: "V",
    meaning: "line voltage the set was designed for (read it on the label: 105-125, 110, 115, 117)",
  },
  { key: "line_now_V", value: 123, unit: "V", meaning: "line voltage measured at your outlet" },
  { key: "line_hz", value: 60, unit: "Hz", meaning: "line frequency" },
  {
    key: "res_load_max",
    value: 0.5,
    unit: "ratio",
    meaning: "highest allowed dissipation / rated watts for a new resistor",
  },
  {
    key: "res_volt_max",
    value: 0.8,
    unit: "ratio",
    meaning: "highest allowed volts / voltage limit for a new resistor",
  },
  {
    key: "unknown_power_steps",
    value: 1,
    unit: "steps",
    meaning:
      "how many ladder steps above the original wattage when the dissipation is not known (1/2 to 1, 1 to 2, 2 to 3 W: 4 W is not commonly made)",
  },
  {
    key: "film_volt_factor",
    value: 1,
    unit: "ratio",
    meaning: "new film capacitor rating >= factor x original rating, then next ladder step",
  },
  {
    key: "film_floor_V",
    value: 630,
    unit: "V",
    meaning: "lowest rating bought for film replacing paper (many shops stock one voltage); 0 = off",
  },
  {
    key: "bias_excess_pct",
    value: 150,
    unit: "%",
    meaning: "cathode and bias electrolytics: allowed above nominal, not below",
  },
  { key: "elec_volt_max", value: 0.9, unit: "ratio", meaning: "highest steady volts / rated volts of an electrolytic" },
  {
    key: "elec_first_excess_pct",
    value: 25,
    unit: "%",
    meaning:
      "first filter: new nominal may exceed the original nominal by at most this, and never the rectifier's own limit",
  },
  { key: "elec_later_excess_pct", value: 100, unit: "%", meaning: "later filter sections: same, no rectifier limit" },
  { key: "elec_under_pct", value: 0, unit: "%", meaning: "how far below the original nominal a filter section may go" },
  {
    key: "r_drift_general_pct",
    value: 20,
    unit: "%",
    meaning: "replace limit for a composition resistor (used when wider than the marked tolerance)",
  },
  { key: "r_drift_rule", value: "max(marked, general)", unit: "choice", meaning: "or: marked | general | half-marked" },
  { key: "grid_shift_V", value: 0.5, unit: "V", meaning: "bias shift tolerated from a leaking coupling capacitor" },
  { key: "ins_coupling_Mohm", value: 200, unit: "MΩ", meaning: "keep limit, capacitor feeding a grid" },
  { key: "ins_bypass_Mohm", value: 50, unit: "MΩ", meaning: "keep limit, screen or plate-supply bypass" },
  {
    key: "line_leak_mA",
    value: 0.5,
    unit: "mA",
    meaning:
      "line-to-chassis current that raises a caution; the figure at the top of the part's tolerance is shown beside it (a figure to look at, not a safety approval)",
  },
  {
    key: "policy",
    value: "trade",
    unit: "choice",
    meaning:
      "trade = replace bad-reputation classes on sight; conservator = test first, keep what passes; overhaul = replace all but stable classes",
  },
  {
    key: "nearest_by",
    value: "ratio",
    unit: "choice",
    meaning: "ratio (log distance) | difference | not-below | not-above",
  },
  { key: "guard", value: "four-way", unit: "choice", meaning: "four-way (IN, IN?, OUT?, OUT) | simple | strict" },
  {
    key: "spares_resistor_pct",
    value: 0,
    unit: "%",
    meaning:
      "resistors ordered beyond what is wanted; up to the next price break more come by themselves where that costs nothing",
  },
  { key: "spares_capacitor_pct", value: 0, unit: "%", meaning: "capacitors ordered beyond what is wanted" },
  { key: "spares_other_pct", value: 0, unit: "%", meaning: "all other parts ordered beyond what is wanted" },
  {
    key: "hide_new_parts",
    value: "no",
    unit: "choice",
    meaning: "no | restuff (new part inside old shell) - changes the fit check from chassis room to shell room",
  },
];

/** The default of every setting, by key. @example defaultSettings.line_now_V // 123 */
export const defaultSettings: Settings = Object.fromEntries(SETTINGS.map(({ key, value }) => [key, value]));
