import type { Kind } from "./part.js";

/** What is to be done with an old part. */
export const ACTIONS = ["keep", "test", "replace", "lift", "check", "ask"] as const;
export type Action = (typeof ACTIONS)[number];

/** How far to go with a set: replace the known bad, test first and keep what passes, or replace all but the stable. */
export const POLICIES = ["trade", "conservator", "overhaul"] as const;
export type Policy = (typeof POLICIES)[number];

/**
 * One row of data: for a class of part or a role in the circuit, what to do, within what limits, in what technology, because, source.
 *
 * Null means the row says nothing on that column; a role's row outranks a class's column by column. Ratios, not
 * percent: `low` -0.2 is 20 % below. `leastVolts` and `wantVolts` are volts or the name of a setting or computed figure.
 */
export type Rule = {
  readonly scope: "class" | "role";
  readonly id: string;
  readonly label: string;
  readonly kind: Kind | null;
  readonly action: Readonly<Record<Policy, Action | null>>;
  readonly powerMode: "step" | "exact" | "computed" | "split" | null;
  readonly ladder: string | null;
  readonly valueMode:
    | "nearest"
    | "not_below"
    | "not_above"
    | "compose"
    | "exact"
    | "same"
    | "split"
    | "computed"
    | "ask"
    | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly gate: "contained" | "nominal" | "none" | null;
  readonly series: string | null;
  readonly driftLimit: number | "marked" | null;
  readonly technologies: readonly string[];
  readonly leastVolts: number | string | null;
  readonly wantVolts: number | string | null;
  readonly unstatedLow: number | null;
  readonly unstatedHigh: number | null;
  readonly unstatedWatts: number | null;
  readonly unstatedVolts: number | null;
  readonly keepBecomesTest: boolean | null;
  readonly cautions: readonly string[];
  readonly because: string;
  readonly source: string;
};

/** The figures and choices that hold for all rows, by key (`line_now_V`, `res_load_max`, `policy`). */
export type Settings = Readonly<Record<string, number | string>>;

/** All that decides: the rule rows and the settings in force. */
export type RulesInForce = { readonly rules: readonly Rule[]; readonly settings: Settings };
