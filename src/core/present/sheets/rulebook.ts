/** TABLE: the sheets of judgement: Rules, Settings and Derating, every row of which is yours to edit. */
import { KINDS } from "../../part.js";
import { ACTIONS } from "../../rule.js";
import {
  CAUTION_WORDS,
  DRIFT_WORDS,
  GATE_WORDS,
  LADDER_WORDS,
  POLICY_WORDS,
  POWER_WORDS,
  SCOPE_WORDS,
  SERIES_WORDS,
  TECHNOLOGY_WORDS,
  VALUE_WORDS,
  VOLTS_WORDS,
} from "../../rules/ruleWords.js";
import { SETTING_WORDS } from "../../rules/settings.js";
import {
  amount,
  type Between,
  degrees,
  figureOrNamed,
  named,
  number,
  severalNamed,
  text,
  word,
  yes,
} from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import { CELSIUS, IN_VOLTS, IN_WATTS, RATIO, VOLTS, WATTS } from "./formats.js";

const yours = { tint: "yours" } as const;

/** Names in order of preference. */
export const IN_ORDER: Between = { write: " > ", read: [/>/] };
/** Names that stand together; without commas, the rules' own names between spaces. */
export const TOGETHER: Between = { write: ", ", read: [/[,;]/, /[\s,;]+/] };

/** Rules: one row for each type of part and each use in the circuit. */
export const RULES_SHEET = sheet("Rules", 3, {
  scope: named("rule for", SCOPE_WORDS, { width: 84, tint: "printed" }),
  id: text("rule", { width: 130, tint: "printed" }),
  label: text("name", { ...yours, width: 210 }),
  off: yes("off", { ...yours, width: 44 }),
  kind: word("kind", KINDS, { ...yours, width: 80 }),
  trade: word(POLICY_WORDS.trade, ACTIONS, { ...yours, group: "action", width: 190 }),
  conservator: word(POLICY_WORDS.conservator, ACTIONS, { ...yours, group: "action", width: 190 }),
  overhaul: word(POLICY_WORDS.overhaul, ACTIONS, { ...yours, group: "action", width: 190 }),
  powerMode: named("watts by", POWER_WORDS, { ...yours, group: "rating", width: 110 }),
  ladder: named("ladder", LADDER_WORDS, { ...yours, group: "rating", width: 120 }),
  valueMode: named("value by", VALUE_WORDS, { ...yours, group: "value", width: 120 }),
  low: number("lowest", RATIO, { ...yours, group: "value", width: 64 }),
  high: number("highest", RATIO, { ...yours, group: "value", width: 64 }),
  gate: named("held to", GATE_WORDS, { ...yours, group: "value", width: 130 }),
  series: named("series", SERIES_WORDS, { ...yours, group: "value", width: 130 }),
  driftLimit: figureOrNamed("drift limit", DRIFT_WORDS, { ...yours, group: "value", width: 80 }),
  technologies: severalNamed("technologies", TECHNOLOGY_WORDS, IN_ORDER, { ...yours, group: "rating", width: 260 }),
  leastVolts: figureOrNamed("least volts", VOLTS_WORDS, { ...yours, group: "rating", width: 130 }),
  wantVolts: figureOrNamed("wanted volts", VOLTS_WORDS, { ...yours, group: "rating", width: 130 }),
  unstatedLow: number("unstated low", RATIO, { ...yours, group: "unstated", width: 70 }),
  unstatedHigh: number("unstated high", RATIO, { ...yours, group: "unstated", width: 70 }),
  unstatedWatts: amount("unstated watts", WATTS, IN_WATTS, { ...yours, group: "unstated", width: 76 }),
  unstatedVolts: amount("unstated volts", VOLTS, IN_VOLTS, { ...yours, group: "unstated", width: 76 }),
  keepBecomesTest: yes("keep becomes test", { ...yours, width: 76 }),
  cautions: severalNamed("cautions", CAUTION_WORDS, TOGETHER, { ...yours, width: 200 }),
  because: text("because", { ...yours, width: 320 }),
  source: text("source", { width: 320, tint: "printed" }),
});
export type RulesRow = RowOf<typeof RULES_SHEET>;

/** Settings: the figures and choices that hold for all rows. */
export const SETTINGS_SHEET = sheet("Settings", 1, {
  key: named("setting", SETTING_WORDS, { width: 250, tint: "printed" }),
  setting: text("stands at", { ...yours, width: 240 }),
  unit: text("unit", { width: 70, tint: "printed" }),
  meaning: text("meaning", { width: 520, tint: "printed" }),
});
export type SettingsRow = RowOf<typeof SETTINGS_SHEET>;

/** Derating: what named policies let a part carry, for DERATE; a row each, with rows of your own below them. */
export const DERATING_SHEET = sheet("Derating", 2, {
  policy: text("policy", { ...yours, width: 150 }),
  part: text("part", { ...yours, width: 210 }),
  of: word("watts or volts", ["watts", "volts"], { ...yours, width: 100 }),
  share: number("share allowed", RATIO, { ...yours, width: 90 }),
  kneeCelsius: degrees("full up to", CELSIUS, { ...yours, width: 80 }),
  zeroCelsius: degrees("nothing at", CELSIUS, { ...yours, width: 80 }),
  source: text("source", { ...yours, width: 420 }),
});
export type DeratingSheetRow = RowOf<typeof DERATING_SHEET>;
