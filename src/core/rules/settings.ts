/** TABLE: settings: the figures and choices that hold for all rows. */
import type { Settings } from "../rule.js";
import { nameSaid, POLICY_WORDS, type Words } from "./ruleWords.js";

/**
 * One setting as its sheet shows it: `label` is its name there; percents and volts are in the unit named, as the user types
 * them; `least` is the smallest figure that means anything (nought where left out); `choices` are the words for what it may
 * be, where it is a choice.
 */
export type SettingRow = {
  readonly key: string;
  readonly label: string;
  readonly value: number | string;
  readonly unit: string;
  readonly meaning: string;
  readonly least?: number;
  readonly choices?: Words;
};

/** The settings with their defaults. Source: common practice, for the user to edit. */
export const SETTINGS: readonly SettingRow[] = [
  {
    key: "line_design_V",
    label: "line volts the set was made for",
    value: 117,
    unit: "V",
    least: 1,
    meaning: "line voltage the set was designed for (read it on the label: 105-125, 110, 115, 117)",
  },
  {
    key: "line_now_V",
    label: "line volts at your outlet",
    value: 123,
    unit: "V",
    least: 1,
    meaning: "line voltage measured at your outlet",
  },
  { key: "line_hz", label: "line hertz", value: 60, unit: "Hz", least: 1, meaning: "line frequency" },
  {
    key: "res_load_max",
    label: "most load of a resistor",
    value: 0.5,
    unit: "ratio",
    least: 0.01,
    meaning: "highest allowed dissipation / rated watts for a new resistor",
  },
  {
    key: "res_volt_max",
    label: "most volts of a resistor",
    value: 0.8,
    unit: "ratio",
    least: 0.01,
    meaning: "highest allowed volts / voltage limit for a new resistor",
  },
  {
    key: "unknown_power_steps",
    label: "steps up in watts",
    value: 1,
    unit: "steps",
    meaning:
      "how many ladder steps above the original wattage when the dissipation is not known (1/2 to 1, 1 to 2, 2 to 3 W: 4 W is not commonly made)",
  },
  {
    key: "film_volt_factor",
    label: "film volts over printed",
    value: 1,
    unit: "ratio",
    meaning: "new film capacitor rating >= factor x original rating, then next ladder step",
  },
  {
    key: "film_floor_V",
    label: "lowest film volts",
    value: 630,
    unit: "V",
    meaning: "lowest rating bought for film replacing paper (many shops stock one voltage); 0 = off",
  },
  {
    key: "bias_excess_pct",
    label: "bias capacitor above nominal",
    value: 150,
    unit: "%",
    meaning: "cathode and bias electrolytics: allowed above nominal, not below",
  },
  {
    key: "elec_volt_max",
    label: "most volts of an electrolytic",
    value: 0.9,
    unit: "ratio",
    least: 0.01,
    meaning: "highest steady volts / rated volts of an electrolytic",
  },
  {
    key: "elec_first_excess_pct",
    label: "first filter above nominal",
    value: 25,
    unit: "%",
    meaning:
      "first filter: new nominal may exceed the original nominal by at most this, and never the rectifier's own limit",
  },
  {
    key: "elec_later_excess_pct",
    label: "later filter above nominal",
    value: 100,
    unit: "%",
    meaning: "later filter sections: same, no rectifier limit",
  },
  {
    key: "elec_under_pct",
    label: "filter below nominal",
    value: 0,
    unit: "%",
    meaning: "how far below the original nominal a filter section may go",
  },
  {
    key: "r_drift_general_pct",
    label: "general drift limit",
    value: 20,
    unit: "%",
    meaning: "replace limit for a composition resistor (used when wider than the marked tolerance)",
  },
  {
    key: "r_drift_rule",
    label: "drift limit that holds",
    value: "max(marked, general)",
    unit: "choice",
    meaning: "which limit a composition resistor is held to",
    choices: {
      "max(marked, general)": "the wider of marked and general",
      marked: "marked",
      general: "general",
      "half-marked": "half of marked",
    },
  },
  {
    key: "grid_shift_V",
    label: "most grid shift",
    value: 0.5,
    unit: "V",
    meaning: "bias shift tolerated from a leaking coupling capacitor",
  },
  {
    key: "ins_coupling_Mohm",
    label: "least insulation to a grid",
    value: 200,
    unit: "MΩ",
    meaning: "keep limit, capacitor feeding a grid",
  },
  {
    key: "ins_bypass_Mohm",
    label: "least insulation of a bypass",
    value: 50,
    unit: "MΩ",
    meaning: "keep limit, screen or plate-supply bypass",
  },
  {
    key: "line_leak_mA",
    label: "line leakage to speak of",
    value: 0.5,
    unit: "mA",
    meaning:
      "line-to-chassis current that raises a caution; the figure at the top of the part's tolerance is shown beside it (a figure to look at, not a safety approval)",
  },
  {
    key: "policy",
    label: "how far to go",
    value: "trade",
    unit: "choice",
    meaning: "for sets whose own card says nothing",
    choices: POLICY_WORDS,
  },
  {
    key: "nearest_by",
    label: "nearest value by",
    value: "ratio",
    unit: "choice",
    meaning:
      "47 k is nearer to 52 k than 56 k by difference, 56 k by ratio; a value may also be held above or below the printed one",
    choices: {
      ratio: "ratio",
      difference: "difference",
      "not-below": "ratio, not below",
      "not-above": "ratio, not above",
    },
  },
  {
    key: "guard",
    label: "verdict of a reading",
    value: "four-way",
    unit: "choice",
    meaning:
      "how far the meter may be off counts four ways (good, likely good, likely bad, bad), not at all, or against the part",
    choices: { "four-way": "four ways", simple: "as read", strict: "good only when certain" },
  },
  {
    key: "spares_resistor_pct",
    label: "spare resistors",
    value: 0,
    unit: "%",
    meaning:
      "resistors ordered beyond what is wanted; up to the next price break more come by themselves where that costs nothing",
  },
  {
    key: "spares_capacitor_pct",
    label: "spare capacitors",
    value: 0,
    unit: "%",
    meaning: "capacitors ordered beyond what is wanted",
  },
  {
    key: "spares_other_pct",
    label: "spares of all else",
    value: 0,
    unit: "%",
    meaning: "all other parts ordered beyond what is wanted",
  },
  {
    key: "hide_new_parts",
    label: "new parts inside old shells",
    value: "no",
    unit: "choice",
    meaning: "a new part inside the old shell has the shell's room, not the chassis'",
    choices: { no: "no", restuff: "yes" },
  },
];

/** The default of every setting, by key. @example defaultSettings.line_now_V // 123 */
export const defaultSettings: Settings = Object.fromEntries(SETTINGS.map(({ key, value }) => [key, value]));

/** The names of settings by their keys. */
export const SETTING_WORDS: Words = Object.fromEntries(SETTINGS.map(({ key, label }) => [key, label]));

/** The setting of a key; undefined for a key of the user's own. */
export const settingNamed = (key: string): SettingRow | undefined => SETTINGS.find((row) => row.key === key);

/** What a setting's cell says: a figure, or one of its choices by word or name; null where it can't be read. */
export function readSetting(key: string, text: string): number | string | null {
  const { choices, value, least = 0 } = settingNamed(key) ?? {};
  if (choices) return nameSaid(choices, text);
  const figure = Number(text.replace(",", "."));
  if (typeof value === "number") return figure >= least ? figure : null;
  return Number.isNaN(figure) ? text : figure;
}

/** What a setting's cell has to hold, for one that can't be read. */
export function settingWants(key: string): string {
  const { choices, unit = "", least = 0 } = settingNamed(key) ?? {};
  return choices
    ? `Write one of: ${Object.values(choices).join("; ")}.`
    : `Write a number from ${least} up, in ${unit}.`;
}
