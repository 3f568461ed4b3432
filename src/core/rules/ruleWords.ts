/** TABLE: what the screen calls what rules and settings say; a cell may hold the word or the rule's own name for it. */
import type { Policy, Rule } from "../rule.js";
import { CAUTIONS } from "./cautions.js";
import { TECHNOLOGIES } from "./technologies.js";

/** Words of the screen by the names that rules have for them. */
export type Words<Name extends string = string> = Readonly<Record<Name, string>>;

type Said<Key extends keyof Rule> = Extract<NonNullable<Rule[Key]>, string>;

/** How far to go with a set. */
export const POLICY_WORDS: Words<Policy> = {
  trade: "replace the known bad",
  conservator: "test first, keep what passes",
  overhaul: "replace all but the stable",
};

/** What a row of Rules is for. */
export const SCOPE_WORDS: Words<Rule["scope"]> = { class: "type", role: "use" };

/** How the watts of the new part are found. */
export const POWER_WORDS: Words<Said<"powerMode">> = {
  step: "a step up",
  exact: "as they were",
  computed: "worked out",
  split: "section by section",
};

/** How the value of the new part is found. */
export const VALUE_WORDS: Words<Said<"valueMode">> = {
  nearest: "nearest",
  not_below: "not below",
  not_above: "not above",
  compose: "made up",
  exact: "as it was",
  same: "same part",
  split: "section by section",
  computed: "worked out",
  ask: "you choose",
};

/** What of an offer has to lie within the limits. */
export const GATE_WORDS: Words<Said<"gate">> = {
  contained: "all it may measure",
  nominal: "its printed value",
  none: "nothing",
};

/** Ladders of ratings. */
export const LADDER_WORDS: Words = {
  res_W: "resistor watts",
  film_V: "film volts",
  elec_V: "electrolytic volts",
  ceramic_V: "ceramic volts",
  mica_V: "mica volts",
  safety_VAC: "line volts a.c.",
  fuse_V: "fuse volts",
};

/** Series of values; E6 to E192 are called so everywhere. */
export const SERIES_WORDS: Words = {
  E3: "E3",
  E6: "E6",
  E12: "E12",
  E24: "E24",
  E48: "E48",
  E96: "E96",
  E192: "E192",
  "E24+WW": "E24 and wirewound",
  ELEC: "electrolytics in stock",
  "1-2.5-5": "1, 2.5, 5",
};

/** Volts that a rule names instead of a figure. */
export const VOLTS_WORDS: Words = {
  warmup_peak: "warm-up peak",
  twice_working: "twice the working volts",
  film_floor_V: "lowest film volts",
};

/** The drift that a part's own tolerance allows. */
export const DRIFT_WORDS: Words<"marked"> = { marked: "as marked" };

/** Types of new part. */
export const TECHNOLOGY_WORDS: Words = Object.fromEntries(TECHNOLOGIES.map(({ id, label }) => [id, label]));

/** Cautions whose name without its strokes says too little. */
const CAUTIONS_NAMED: Words = {
  y_class: "class Y",
  x_class: "class X",
  hv: "high voltage",
  xray: "X-rays",
  pcb_oil: "PCB oil",
  res_voltage: "volts of a resistor",
  res_pulse: "pulses on a resistor",
  ww_inductance: "wire is a coil",
  warmup_peak: "warm-up peak",
  can_insulated: "insulated can",
  tc_match: "same temperature code",
  class2_loss: "loss under volts",
  vhf_leads: "short leads at VHF",
  dvdt: "steep pulses",
  pot_tap: "tap of a control",
  pot_dc: "d.c. through a control",
  meter_cal: "meter calibration",
};

/** Cautions by short names. */
export const CAUTION_WORDS: Words = Object.fromEntries(
  CAUTIONS.map(({ id }) => [id, CAUTIONS_NAMED[id] ?? id.replaceAll("_", " ")]),
);

const plain = (text: string) => text.trim().toLowerCase();

/** The rule's own name that a text means, by word or by name; null where it means none. @example nameSaid(POLICY_WORDS, "trade") // "trade" */
export function nameSaid<Name extends string>(words: Words<Name>, text: string): Name | null {
  const names = Object.keys(words) as Name[];
  return names.find((name) => plain(name) === plain(text) || plain(words[name]) === plain(text)) ?? null;
}

/** The word for a rule's name; the name itself where there is none. */
export const wordFor = (words: Words, name: string): string => words[name] ?? name;
