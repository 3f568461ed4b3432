import type { Action } from "../rule.js";
import { CAUTIONS } from "../rules/cautions.js";
import type { RuleFor } from "../rules/ruleFor.js";
import { SET_CAUTIONS } from "../rules/setCautions.js";

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

/** What the set is: with a picture tube, with a chassis that can be at the line; unknown where left out. */
export type SetFacts = { readonly pictureTube?: boolean; readonly liveChassis?: boolean };

/** Rectifiers whose place silicon takes: in a set with a picture tube the high voltage rises with B+. */
const BECOMES_SILICON: readonly string[] = ["selenium", "tube_rectifier"];

/** Cautions that the set puts on the part's own card. */
function ofTheSet({ classRow, safety }: RuleFor, stays: boolean, set: SetFacts): readonly string[] {
  const toSilicon = set.pictureTube && !stays && BECOMES_SILICON.includes(classRow.id);
  const card = SET_CAUTIONS.find(({ when }) => when === "rectifier-to-silicon")?.cautions ?? [];
  const live = SET_CAUTIONS.find(({ when }) => when === "live-chassis")?.cautions ?? [];
  return [...(toSilicon ? card : []), ...(set.liveChassis && safety !== null ? live : [])];
}

/**
 * The cautions of a part: those of its class and its use, stops first; where the part stays, without those of the new one.
 *
 * The set adds its own where they bear on the part: X-rays where silicon takes a rectifier's place in a set with a picture
 * tube, the live chassis where the line stands on the part.
 */
export function cautionsOf(rule: RuleFor, action: Action, set: SetFacts = {}): readonly string[] {
  const stays = action === "keep";
  const own = rule.cautions.filter((id) => !(stays && OF_THE_NEW.includes(id)));
  const wanted = [...new Set([...own, ...ofTheSet(rule, stays, set)])];
  const rank = (id: string) => LEVELS.indexOf(CAUTIONS.find((caution) => caution.id === id)?.level ?? "note");
  return [...wanted].sort((a, b) => rank(a) - rank(b));
}
