import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import type { Action, Policy, Rule, RulesInForce } from "../rule.js";
import { defaultRules } from "./defaultRules.js";
import { nearestNames } from "./nearestNames.js";
import { withSettings } from "./settingColumns.js";
import { technologyOf } from "./technologies.js";

/** The columns that a role may take over from the class. */
export const ROLE_COLUMNS = [
  "powerMode",
  "ladder",
  "valueMode",
  "low",
  "high",
  "gate",
  "series",
  "driftLimit",
  "leastVolts",
  "wantVolts",
  "keepBecomesTest",
] as const;

/** Columns that a class kept exact or the same (fusible, fuse, lamp, coded ceramic, trimmer) does not hand over to a role. */
const KEPT_EXACT: readonly string[] = ["powerMode", "ladder", "valueMode", "low", "high", "gate", "series"];

/**
 * The rule that holds for one part: its class's row with what its role takes over, and the action under the policy in force.
 *
 * `safety` names the class that a line place demands; `decidedBy` says which row spoke in each column.
 */
export type RuleFor = Omit<Rule, "scope" | "action"> & {
  readonly classRow: Rule;
  readonly roleRow: Rule;
  readonly policy: Policy;
  readonly action: Action;
  readonly safety: "X" | "Y" | null;
  readonly decidedBy: Readonly<Record<string, string>>;
};

/** A row's name as Facts and papers give it. @example rowName(row) // "type paper_wax" */
export function rowName(row: Rule): string {
  return `${row.scope === "class" ? "type" : "use"} ${row.id}`;
}

/** What stands where a default row is switched off: a type nobody knows, no special duty. */
const WHERE_OFF = { class: "unknown", role: "general" } as const;

function rowOf({ rules, settings }: RulesInForce, scope: Rule["scope"], id: string): Rule {
  const named = (rows: readonly Rule[], wanted: string) =>
    rows.find((rule) => rule.scope === scope && rule.id === wanted);
  const found = named(rules, id) ?? (named(defaultRules(), id) && named(defaultRules(), WHERE_OFF[scope]));
  if (found) return withSettings(found, settings);
  throw unknownRow(rules, scope, id);
}

/** The problem of a type or use that no row has, with the nearest ones that do. */
export function unknownRow(rules: readonly Rule[], scope: Rule["scope"], id: string): PartsError {
  const like = nearestNames(
    id,
    rules.filter((rule) => rule.scope === scope).map((rule) => rule.id),
  );
  const such = like.length > 0 ? `, such as ${like.join(", ")}` : "";
  const wanted = scope === "class" ? `Give a type of the sheet Rules${such}.` : `Give a use of the sheet Rules${such}.`;
  return new PartsError("unknown-name", id, wanted);
}

/** The row of a class alone, with the figures that settings give it; problem `unknown-name` as `ruleFor`. */
export function classRuleFor(inForce: RulesInForce, className: string): Rule {
  return rowOf(inForce, "class", className);
}

const demandsSafety = (role: Rule) => role.technologies.some((id) => id === "x_class" || id === "y_class");

/** The safety class a role demands of a capacitor, read from the technologies of its row. */
function safetyOf(role: Rule, kind: Kind | null): "X" | "Y" | null {
  if (kind !== null && kind !== "capacitor" && kind !== "network") return null;
  if (!demandsSafety(role)) return null;
  return role.technologies.includes("y_class") ? "Y" : "X";
}

const suits = (id: string, kind: Kind | null) => {
  const made = technologyOf(id)?.kind ?? null;
  return made === null || kind === null || kind === "network" || made === kind;
};

/** What each column says, and which row said it; `mute` tells the columns in which the role has no say. */
function merged(classRow: Rule, roleRow: Rule, mute: (column: string) => boolean) {
  const columns: Record<string, unknown> = {};
  const decidedBy: Record<string, string> = {};
  for (const column of ROLE_COLUMNS) {
    const row = !mute(column) && roleRow[column] !== null ? roleRow : classRow;
    columns[column] = row[column];
    decidedBy[column] = rowName(row);
  }
  return { columns: columns as Pick<Rule, (typeof ROLE_COLUMNS)[number]>, decidedBy };
}

/**
 * The rule that holds for a class of part in a role.
 *
 * Role over class, column by column, with two exceptions: a class kept exact (fusible, fuse, lamp, coded ceramic) or the
 * same (trimmer, feedthrough) keeps its value, watts and technology under every role except one that demands class X or
 * Y; technologies for another kind
 * of part are passed over. Cans, blocks and networks are split before they come here: each section has its own role.
 *
 * @param inForce The rules and settings in force; the setting `policy` picks the action.
 * A default row that is switched off leaves `unknown` (ask) or `general`; figures of default rows follow the settings.
 *
 * @param className Id of a class row; problem `unknown-name` where there never was such a row.
 * @param role Id of a role row; null means no special duty.
 * @example ruleFor(DEFAULTS_IN_FORCE, "paper_wax", "line_to_chassis").technologies // ["y_class"]
 */
export function ruleFor(inForce: RulesInForce, className: string, role: string | null): RuleFor {
  const classRow = classRuleFor(inForce, className);
  const roleRow = rowOf(inForce, "role", role ?? "general");
  const policy = inForce.settings.policy as Policy;
  const safety = safetyOf(roleRow, classRow.kind);
  const foreign = safety === null && demandsSafety(roleRow);
  const stays = classRow.powerMode === "exact" || classRow.valueMode === "exact" || classRow.valueMode === "same";
  const exact = safety === null && stays;

  const { columns, decidedBy } = merged(
    classRow,
    roleRow,
    (column) => foreign || (exact && KEPT_EXACT.includes(column)),
  );
  const fitting = exact || foreign ? [] : roleRow.technologies.filter((id) => suits(id, classRow.kind));
  const technologyRow = fitting.length > 0 ? roleRow : classRow;
  const actionRow = !foreign && roleRow.action[policy] !== null ? roleRow : classRow;
  const action = actionRow.action[policy] ?? "ask";
  return {
    ...classRow,
    ...columns,
    technologies: fitting.length > 0 ? fitting : classRow.technologies,
    cautions: [...new Set([...classRow.cautions, ...roleRow.cautions])],
    classRow,
    roleRow,
    policy,
    action: action === "keep" && columns.keepBecomesTest ? "test" : action,
    safety,
    decidedBy: { ...decidedBy, action: rowName(actionRow), technologies: rowName(technologyRow) },
  };
}
