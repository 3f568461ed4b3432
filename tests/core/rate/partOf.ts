import {
  complete,
  DEFAULTS_IN_FORCE,
  type ListedPart,
  type Part,
  type Place,
  type Ratings,
  type RulesInForce,
  ratingsFor,
  ruleFor,
  type Settings,
  UNKNOWN_PLACE,
} from "../../../src/core/index.js";
import { listed } from "../listed.js";

const RESISTORS = ["carbon_comp", "carbon_film_old", "wirewound", "cathode_r", "bleeder", "fusible"];

/** A completed part of a class and use under rules, stating nothing but what a test gives. */
export function completedUnder(
  inForce: RulesInForce,
  className: string,
  role: string | null,
  stated: Partial<ListedPart> = {},
): Part {
  const kind =
    DEFAULTS_IN_FORCE.rules.find((rule) => rule.scope === "class" && rule.id === className)?.kind ??
    (RESISTORS.includes(className) ? "resistor" : "capacitor");
  const said = { className, role };
  return complete(listed({ kind, ...stated }), { id: "T-1", document: "test", inForce, said });
}

/** A completed part of a class and use under the default rows. */
export const partOf = (className: string, role: string | null, stated: Partial<ListedPart> = {}): Part =>
  completedUnder(DEFAULTS_IN_FORCE, className, role, stated);

/** The rule of a part under the default rows, with settings changed. */
export function ruled(part: Part, settings: Settings = {}) {
  const inForce = { ...DEFAULTS_IN_FORCE, settings: { ...DEFAULTS_IN_FORCE.settings, ...settings } };
  return { rule: ruleFor(inForce, part.className.value, part.role?.value ?? null), settings: inForce.settings };
}

/** The ratings of a part in a place. */
export function rate(
  part: Part,
  place: Partial<Place> = {},
  settings: Settings = {},
  stock?: readonly number[],
): Ratings {
  const { rule, settings: inForce } = ruled(part, settings);
  return ratingsFor(part, rule, inForce, { place: { ...UNKNOWN_PLACE, ...place }, stock: stock ?? null });
}
