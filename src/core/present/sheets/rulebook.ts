/** TABLE: the sheets of judgement: Rules, Settings and Derating, every row of which is yours to edit. */
import { KINDS } from "../../part.js";
import { ACTIONS } from "../../rule.js";
import { number, text, word, yes } from "../column.js";
import { type RowOf, sheet } from "../sheet.js";
import { CELSIUS, RATIO, VOLTS, WATTS } from "./formats.js";

const yours = { tint: "yours" } as const;

/** Rules: one row for each type of part and each use in the circuit. */
export const RULES_SHEET = sheet("Rules", 3, {
  scope: word("rule for", ["class", "role"], { width: 60, tint: "printed" }),
  id: text("rule", { width: 130, tint: "printed" }),
  label: text("name", { ...yours, width: 210 }),
  off: yes("off", { ...yours, width: 44 }),
  kind: word("kind", KINDS, { ...yours, width: 80 }),
  trade: word("replace the known bad", ACTIONS, { ...yours, group: "action", width: 90 }),
  conservator: word("test first, keep what passes", ACTIONS, { ...yours, group: "action", width: 90 }),
  overhaul: word("replace all but the stable", ACTIONS, { ...yours, group: "action", width: 90 }),
  powerMode: word("watts by", ["step", "exact", "computed", "split"], { ...yours, group: "rating", width: 80 }),
  ladder: text("ladder", { ...yours, group: "rating", width: 80 }),
  valueMode: word(
    "value by",
    ["nearest", "not_below", "not_above", "compose", "exact", "same", "split", "computed", "ask"],
    { ...yours, group: "value", width: 90 },
  ),
  low: number("lowest", RATIO, { ...yours, group: "value", width: 64 }),
  high: number("highest", RATIO, { ...yours, group: "value", width: 64 }),
  gate: word("held to", ["contained", "nominal", "none"], { ...yours, group: "value", width: 84 }),
  series: text("series", { ...yours, group: "value", width: 80 }),
  driftLimit: text("drift limit", { ...yours, group: "value", width: 80 }),
  technologies: text("technologies", { ...yours, group: "rating", width: 260 }),
  leastVolts: text("least volts", { ...yours, group: "rating", width: 100 }),
  wantVolts: text("wanted volts", { ...yours, group: "rating", width: 100 }),
  unstatedLow: number("unstated low", RATIO, { ...yours, group: "unstated", width: 70 }),
  unstatedHigh: number("unstated high", RATIO, { ...yours, group: "unstated", width: 70 }),
  unstatedWatts: number("unstated watts", WATTS, { ...yours, group: "unstated", width: 76 }),
  unstatedVolts: number("unstated volts", VOLTS, { ...yours, group: "unstated", width: 76 }),
  keepBecomesTest: yes("keep becomes test", { ...yours, width: 76 }),
  cautions: text("cautions", { ...yours, width: 200 }),
  because: text("because", { ...yours, width: 320 }),
  source: text("source", { width: 320, tint: "printed" }),
});
export type RulesRow = RowOf<typeof RULES_SHEET>;

/** Settings: the figures and choices that hold for all rows. */
export const SETTINGS_SHEET = sheet("Settings", 1, {
  key: text("setting", { width: 170, tint: "printed" }),
  setting: text("stands at", { ...yours, width: 130 }),
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
  kneeCelsius: number("full up to", CELSIUS, { ...yours, width: 80 }),
  zeroCelsius: number("nothing at", CELSIUS, { ...yours, width: 80 }),
  source: text("source", { ...yours, width: 420 }),
});
export type DeratingSheetRow = RowOf<typeof DERATING_SHEET>;
