import type { Action } from "../rule.js";
import { CAUTIONS } from "../rules/cautions.js";
import type { RuleFor } from "../rules/ruleFor.js";

const LEVELS = ["stop", "look", "note"] as const;

/** Cautions that speak of the new part and mean nothing while the old one stays. */
const OF_THE_NEW: readonly string[] = [
  "cut_old",
  "dvdt",
  "res_voltage",
  "res_pulse",
  "class2_loss",
  "realign",
  "outside_foil",
  "heat_standoff",
  "tc_match",
  "tuned_exact",
];

/**
 * The cautions of a part: those of its class and its use, stops first; where the part stays, without those of the new one.
 *
 * Class X and Y cautions stand only where the place demands the class.
 */
export function cautionsOf(rule: RuleFor, action: Action): readonly string[] {
  const stays = action === "keep";
  const wanted = rule.cautions.filter((id) => !(stays && OF_THE_NEW.includes(id)));
  const rank = (id: string) => LEVELS.indexOf(CAUTIONS.find((caution) => caution.id === id)?.level ?? "note");
  return [...wanted].sort((a, b) => rank(a) - rank(b));
}
