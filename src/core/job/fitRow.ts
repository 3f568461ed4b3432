import { writeTolerance } from "../quantity/tolerance.js";
import { POLICY_WORDS } from "../rules/ruleWords.js";
import { technologyOf } from "../rules/technologies.js";
import type { Cell } from "../table.js";
import { reasonLine } from "./oneLine.js";
import type { Stages } from "./stages.js";
import { unsureOf } from "./unsureOf.js";

/**
 * What to do and what to fit as seven cells: action, value, tolerance, watts, volts, type of the new part, and the reason.
 *
 * @param byDefault Whether the rules are nobody's but the defaults; the reason says so.
 * @example fitRow(stages, true).slice(0, 2) // ["replace", "0.047 µF"]
 */
export function fitRow(stages: Stages, byDefault: boolean): Cell[] {
  const { decision, ratings, rule } = stages;
  const { aim, choices = [] } = ratings;
  const piece = aim?.pieces[0] ?? null;
  return [
    decision.action,
    aim?.text ?? (choices.length > 0 ? "choose" : ""),
    piece?.tolerance ? writeTolerance(piece.tolerance) : "",
    piece?.watts ?? "",
    piece?.volts ?? "",
    piece ? (technologyOf(piece.technology)?.label ?? piece.technology) : "",
    [
      reasonLine(stages),
      ...unsureOf(stages),
      `by ${byDefault ? "the default" : "your"} rules, ${POLICY_WORDS[rule.policy]}`,
    ].join("; "),
  ];
}
