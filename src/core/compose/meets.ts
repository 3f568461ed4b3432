import type { Span } from "../part.js";
import { type Borne, bear, wholeOf } from "./borne.js";
import type { Form, Join } from "./forms.js";

/** A limit met to the last digit is met, whatever arithmetic in double precision makes of it. */
export const SLACK = 1e-9;

/** What a network with this join outermost is held against; all numbers are those which that join adds. */
export type Test = {
  readonly outer: Join;
  /** What the whole may come to with every part at either end of its tolerance. */
  readonly window: Span;
  /** What each part counts, by its place: as printed, and at either end of its tolerance. */
  readonly numbers: Float64Array;
  readonly ends: readonly [Float64Array, Float64Array];
  readonly hasTolerance: boolean;
  /** What each part may bear of the whole's watts and volts, by its place; null: any. */
  readonly ratios: { readonly watts: Float64Array; readonly volts: Float64Array } | null;
};

/** Whether value and ratings hold with each part at its printed value, and at either end of its tolerance. */
export function holds(test: Test, form: Form, places: readonly number[]): boolean {
  const borne: Borne = { added: [], through: [] };
  const numbers = places.map((place) => test.numbers[place]!);
  if (!holdsAt(test, form, places, numbers, borne)) return false;
  if (!test.hasTolerance) return true;
  // From all ends low to all high: those two corners decide the value, and so refuse most.
  const corners = 2 ** places.length;
  for (let corner = 0; corner < corners; corner++) {
    for (let i = 0; i < places.length; i++) {
      const isUp = ((corner >> 1) ^ (corner & 1 ? corners - 1 : 0)) & (1 << i);
      numbers[i] = test.ends[isUp ? 1 : 0][places[i]!]!;
    }
    if (!holdsAt(test, form, places, numbers, borne)) return false;
  }
  return true;
}

function holdsAt(test: Test, form: Form, places: readonly number[], numbers: readonly number[], borne: Borne): boolean {
  const { window, ratios, outer } = test;
  const whole = wholeOf(form, numbers);
  if (whole < window.min * (1 - SLACK) || whole > window.max * (1 + SLACK)) return false;
  if (!ratios) return true;
  bear(form, numbers, borne);
  const volts = outer === "series" ? borne.added : borne.through;
  for (let i = 0; i < places.length; i++) {
    const place = places[i]!;
    if (borne.added[i]! * borne.through[i]! > ratios.watts[place]! * (1 + SLACK)) return false;
    if (volts[i]! > ratios.volts[place]! * (1 + SLACK)) return false;
  }
  return true;
}
