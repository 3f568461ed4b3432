import type { Place } from "../circuit/place.js";
import type { Part } from "../part.js";
import type { Settings } from "../rule.js";
import type { RuleFor } from "../rules/ruleFor.js";
import { type ValueLimits, valueLimits } from "./valueLimits.js";
import { type VoltsNeeded, voltsNeeded } from "./voltsNeeded.js";
import { type WattsNeeded, wattsNeeded } from "./wattsNeeded.js";

/** Everything a new part has to meet, and all that it rests on. `stock` are the only values to be had, null: what is usually made. */
export type Need = {
  readonly part: Part;
  readonly rule: RuleFor;
  readonly place: Place;
  readonly settings: Settings;
  readonly stock: readonly number[] | null;
  readonly value: ValueLimits;
  readonly watts: WattsNeeded;
  readonly volts: VoltsNeeded;
};

/** What a new part has to meet in value, watts and volts. */
export function needOf(
  part: Part,
  rule: RuleFor,
  place: Place,
  settings: Settings,
  stock: readonly number[] | null,
): Need {
  return {
    part,
    rule,
    place,
    settings,
    stock,
    value: valueLimits(part, rule, place, settings),
    watts: wattsNeeded(part, rule, place, settings),
    volts: voltsNeeded(part, rule, place, settings),
  };
}
