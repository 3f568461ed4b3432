import { type Action, POLICIES, type Rule } from "../rule.js";

/** A rule row as its table writes it: columns that say nothing are left out; the three actions are for trade, conservator, overhaul. */
export type RuleRow = Pick<Rule, "id" | "label" | "because" | "source"> &
  Partial<Omit<Rule, "scope" | "action">> & { readonly action?: readonly [Action, Action, Action] };

const SILENT = {
  kind: null,
  powerMode: null,
  ladder: null,
  valueMode: null,
  low: null,
  high: null,
  gate: null,
  series: null,
  driftLimit: null,
  technologies: [],
  leastVolts: null,
  wantVolts: null,
  unstatedLow: null,
  unstatedHigh: null,
  unstatedWatts: null,
  unstatedVolts: null,
  keepBecomesTest: null,
  cautions: [],
} as const;

/**
 * The full rule of a written row: what the row leaves out is null.
 *
 * @example fullRule("role", { id: "general", label: "No special duty", because: "class rule stands", source: "common practice" })
 */
export function fullRule(scope: Rule["scope"], row: RuleRow): Rule {
  const action = Object.fromEntries(POLICIES.map((policy, i) => [policy, row.action?.[i] ?? null]));
  return { ...SILENT, ...row, scope, action: action as Rule["action"] };
}
