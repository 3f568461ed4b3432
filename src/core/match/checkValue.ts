import type { Offer } from "../offer.js";
import type { Span } from "../part.js";
import { close } from "../quantity/close.js";
import { containment, windowOf } from "../quantity/window.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Ratings } from "../ratings.js";
import { type Check, met, type Note, out, tight } from "./note.js";

/** The span a nominal value may lie in: the window, or the one value wanted; null where any value will do. */
export function nominalSpan({ gate, window, wanted }: Ratings): Span | null {
  if (gate === "none") return null;
  return window ?? (wanted === null ? null : { min: wanted, max: wanted });
}

/** Whether a value lies in a span; one that meets an end within rounding does. */
export function inside(value: number, { min, max }: Span): boolean {
  return (value >= min || close(value, min)) && (value <= max || close(value, max));
}

/**
 * The value: its nominal in the window, and by the gate `contained` the whole of what it may be within what the old part could be.
 *
 * By the gate `nominal` an offer that reaches out of the old limits fits all the same, and the excess is told.
 */
export const checkValue: Check = (ratings, offer) => {
  const window = nominalSpan(ratings);
  if (!window) return met;
  if (offer.value === null) return out("value", offer.valueMin === null ? "no value stated" : "adjustable");
  if (!inside(offer.value, window))
    return out("value", `${writeValue(offer.value, ratings.kind)} is outside ${writeSpan(window, ratings)}`);
  return ratings.old ? checkLimits(ratings, offer, ratings.old) : met;
};

function checkLimits(ratings: Ratings, { value, tolerance }: Offer, old: Span): readonly Note[] {
  const strict = ratings.gate === "contained";
  if (tolerance === null) return strict ? out("value", "tolerance not stated, so its limits are not known") : met;
  const span = windowOf(value!, tolerance);
  const { inside: within, below, above } = containment(span, old);
  if (within) return met;
  const beyond = Number((Math.max(below, above) * 100).toPrecision(2));
  const text = `may be ${writeSpan(span, ratings)}, ${beyond} % beyond the old ${writeSpan(old, ratings)}`;
  return strict ? out("value", text) : tight("value", text);
}

/** A span in words; a limit of nothing is 0. */
function writeSpan({ min, max }: Span, { kind }: Ratings): string {
  const write = (value: number) => (value > 0 ? writeValue(value, kind) : "0");
  return min === max ? write(min) : `${write(min)} to ${write(max)}`;
}
