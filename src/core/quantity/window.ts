import type { Span, Tolerance } from "../part.js";
import { close } from "./close.js";

/**
 * What a nominal value may really be: from its lowest to its highest within the tolerance.
 *
 * @param nominal In base units.
 * @example windowOf(10_000, { minus: 0.1, plus: 0.1 }) // { min: 9_000, max: 11_000 }
 */
export function windowOf(nominal: number, tolerance: Tolerance): Span {
  return { min: nominal * (1 - tolerance.minus), max: nominal * (1 + tolerance.plus) };
}

/**
 * How one window lies in another; `below` and `above` say by how much (a ratio of the outer limit) it sticks out on each side.
 */
export type Containment = { readonly inside: boolean; readonly below: number; readonly above: number };

/**
 * Whether a new part's window lies inside the old one's, and if not, by how much it sticks out on each side.
 *
 * 0.022 µF ±10 % reaches 0.0242 µF; the old 0.02 µF ±20 % ended at 0.024: 0.8 % over. Limits that agree within rounding count as inside.
 *
 * @param inner The new part's window, base units.
 * @param outer The old part's window, same unit.
 * @example containment({ min: 9, max: 13 }, { min: 8, max: 12 }) // { inside: false, below: 0, above: 0.0833 }
 */
export function containment(inner: Span, outer: Span): Containment {
  const below = inner.min >= outer.min || close(inner.min, outer.min) ? 0 : 1 - inner.min / outer.min;
  const above = inner.max <= outer.max || close(inner.max, outer.max) ? 0 : inner.max / outer.max - 1;
  return { inside: below === 0 && above === 0, below, above };
}
