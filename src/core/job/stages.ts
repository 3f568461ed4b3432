import { UNKNOWN_PLACE } from "../circuit/place.js";
import { decide, type Evidence } from "../decide/decide.js";
import type { Decision } from "../decide/decision.js";
import type { Part } from "../part.js";
import { ratingsFor } from "../rate/ratingsFor.js";
import type { Ratings } from "../ratings.js";
import type { RulesInForce } from "../rule.js";
import { type RuleFor, ruleFor } from "../rules/ruleFor.js";

/** One part through the stages: the rule that holds, what is decided, what a new part has to meet, and what else bears on it. */
export type Stages = {
  readonly part: Part;
  readonly rule: RuleFor;
  readonly decision: Decision;
  readonly ratings: Ratings;
  readonly also?: readonly string[];
};

/**
 * A completed part decided and rated under the rules in force.
 *
 * @throws PartsError "unknown-name" for a type or use that no rule has.
 * @example stagesOfPart(part, DEFAULTS_IN_FORCE).decision.action // "replace"
 */
export function stagesOfPart(part: Part, inForce: RulesInForce, evidence: Evidence = {}): Stages {
  const rule = ruleFor(inForce, part.className.value, part.role?.value ?? null);
  const decision = decide(part, rule, inForce.settings, evidence);
  const ratings = ratingsFor(part, rule, inForce.settings, { place: evidence.place ?? UNKNOWN_PLACE });
  return { part, rule, decision, ratings };
}
