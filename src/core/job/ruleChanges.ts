import type { Evidence } from "../decide/decide.js";
import type { Part } from "../part.js";
import type { RulesInForce } from "../rule.js";
import { newText } from "./oneLine.js";
import { stagesOfPart } from "./stages.js";

/** A part whose answer a change of rules changes, in words before and after. */
export type RuleChange = { readonly part: string; readonly before: string; readonly after: string };

/**
 * Which parts a change of rules or settings changes, before it is written.
 *
 * @param evidence What was read of a part, by its id; nothing where left out.
 * @example ruleChanges(parts, DEFAULTS_IN_FORCE, edited) // [{ part: "HL-14", before: "test: 47 k ...", after: "replace: 47 k ..." }]
 */
export function ruleChanges(
  parts: readonly Part[],
  before: RulesInForce,
  after: RulesInForce,
  evidence: (part: Part) => Evidence = () => ({}),
): readonly RuleChange[] {
  const answer = (part: Part, inForce: RulesInForce) => {
    const { decision, ratings } = stagesOfPart(part, inForce, evidence(part));
    return [decision.action, newText(ratings)].filter(Boolean).join(": ");
  };
  return parts.flatMap((part) => {
    const change = { part: part.id, before: answer(part, before), after: answer(part, after) };
    return change.before === change.after ? [] : [change];
  });
}
