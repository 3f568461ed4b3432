import type { Fact } from "../fact.js";
import type { Part, Tolerance } from "../part.js";
import { fromInWords } from "../present/typeNames.js";
import { writeWarnings } from "../present/warningWords.js";
import { figures } from "../quantity/figures.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { writeValue } from "../quantity/writeValue.js";
import { rowName } from "../rules/ruleFor.js";
import { POLICY_WORDS } from "../rules/ruleWords.js";
import type { Stages } from "./stages.js";

/** One link of the chain behind an answer: what it is about, what is said, and where that comes from. */
export type Link = readonly [about: string, says: string, from: string];

const WHENCE = {
  line: "the list",
  note: "a note of the list",
  default: "a default",
  bench: "the bench",
  user: "you",
} as const;

/** Where a fact is from, in one breath. @example "the list, line 39: its use says so, likely" */
const whence = ({ from, at, sure }: Fact<unknown>) =>
  [WHENCE[from], at === "you" ? "" : at.replace(/^note /, ""), sure ?? ""].filter(Boolean).join(", ");

function link<T>(about: string, fact: Fact<T> | null, write: (value: T) => string): readonly Link[] {
  return fact === null ? [] : [[about, write(fact.value), whence(fact)]];
}

function facts(part: Part): readonly Link[] {
  return [
    ...link("value", part.value, (value) => writeValue(value, part.kind)),
    ...link("tolerance", part.tolerance, (tolerance: Tolerance) => writeTolerance(tolerance)),
    ...(part.kind === "resistor" ? link("watts", part.watts, (watts) => `${figures(watts)} W`) : []),
    ...(part.kind === "resistor" ? [] : link("volts", part.volts, (volts) => `${figures(volts)} V`)),
  ];
}

/** The row that a reason was taken from, else the one that decided. */
function reasonFrom(why: string, { rule, decision }: Stages): string {
  if (why === rule.classRow.because) return rowName(rule.classRow);
  return why === rule.roleRow.because ? rowName(rule.roleRow) : decision.rule;
}

/**
 * The chain of Facts and rule rows behind an answer: what was known and from where, which rows spoke, what was read, what
 * was asked of the new part, and what was weighed and turned down.
 *
 * @example chainOf(stages)[0] // ["value", "470 k", "the list, line 1"]
 */
export function chainOf(stages: Stages): readonly Link[] {
  const { part, rule, decision, ratings } = stages;
  const { classRow, roleRow } = rule;
  const role: readonly Link[] =
    roleRow.id === "general"
      ? []
      : [["use", `${roleRow.label}: ${roleRow.because}`, part.role ? whence(part.role) : ""]];
  const links: readonly Link[] = [
    ...facts(part),
    ...part.warnings.map((warning): Link => ["in doubt", writeWarnings([warning]), ""]),
    ["type", `${classRow.label}: ${classRow.because}`, whence(part.className)],
    ...role,
    ["source of the rule", classRow.source, rule.decidedBy.action ?? ""],
    ["how far to go", POLICY_WORDS[decision.policy], "the settings"],
    ...decision.because.map((why): Link => ["decided", `${decision.action}: ${why}`, reasonFrom(why, stages)]),
    ...decision.toRead.map((test): Link => ["to read", test, rowName(classRow)]),
    ...ratings.because.map((why): Link => ["new part", why, rule.decidedBy.valueMode ?? ""]),
    ...(ratings.fit ? [["room", `${ratings.fit.fit}: ${ratings.fit.because}`, "usual body sizes"] as const] : []),
    ...ratings.rejected.map(({ what, why }): Link => ["not", `${what}: ${why}`, ""]),
    ...(ratings.choices ?? []).map((choice): Link => ["to choose", choice, ""]),
  ];
  return links.map(([about, says, from]) => [about, says, fromInWords([classRow, roleRow], from)]);
}
