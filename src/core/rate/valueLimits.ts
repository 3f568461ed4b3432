import type { Place } from "../circuit/place.js";
import type { Part, Span } from "../part.js";
import { windowOf } from "../quantity/window.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Rule, Settings } from "../rule.js";
import type { RuleFor } from "../rules/ruleFor.js";

/** How the new value is chosen, what it may be, what the old part could be, and what narrowed it. */
export type ValueLimits = {
  readonly mode: Exclude<Rule["valueMode"], "split" | null>;
  readonly wanted: number | null;
  readonly window: Span | null;
  readonly old: Span | null;
  readonly mostFarads: number | null;
  readonly because: readonly string[];
};

/** A section of what was split is chosen as its kind is: an electrolytic never below, anything else the nearest. */
function modeOf(rule: RuleFor): ValueLimits["mode"] {
  if (rule.valueMode !== "split") return rule.valueMode ?? "same";
  return rule.ladder === "elec_V" ? "not_below" : "nearest";
}

/** A window held to the user's side of the printed value: never below it, never above it, or either. */
function onSide(window: Span, wanted: number, { nearest_by }: Settings): Span {
  if (nearest_by === "not-below") return { min: Math.max(window.min, wanted), max: Math.max(window.max, wanted) };
  return nearest_by === "not-above" ? { min: Math.min(window.min, wanted), max: Math.min(window.max, wanted) } : window;
}

/**
 * What the new value may be: the rule's window about the printed value, on the user's side of it, never above what the
 * rectifier's sheet allows.
 *
 * @example valueLimits(part, rule, { ...UNKNOWN_PLACE, rectifierFarads: 20e-6 }, settings).window // { min: 16e-6, max: 20e-6 }
 */
export function valueLimits(part: Part, rule: RuleFor, place: Place, settings: Settings): ValueLimits {
  const mode = modeOf(rule);
  const wanted = part.value?.value ?? null;
  const old = wanted !== null && part.tolerance ? windowOf(wanted, part.tolerance.value) : null;
  const blank = { mode, wanted, window: null, old, mostFarads: null, because: [] };
  if (wanted === null || rule.low === null || rule.high === null) return blank;
  const ruled = onSide({ min: wanted * (1 + rule.low), max: wanted * (1 + rule.high) }, wanted, settings);
  const most = part.kind === "capacitor" && rule.ladder === "elec_V" ? place.rectifierFarads : null;
  if (most === null) return { ...blank, window: ruled };
  const wins = most < wanted ? `: that wins over the ${writeValue(wanted, part.kind)} of the list` : "";
  const because = [`the rectifier's sheet allows ${writeValue(most, part.kind)} at most${wins}`];
  return {
    ...blank,
    window: { min: Math.min(ruled.min, most), max: Math.min(ruled.max, most) },
    mostFarads: most,
    because,
  };
}
