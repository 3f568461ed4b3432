import { PartsError } from "../problem.js";

/**
 * The least rating a part needs when only a share of it may be used: 0.35 W at a share of 0.55 needs 0.636 W.
 *
 * @param stress What the part bears: watts, or volts (peak, where alternating volts are added to dc).
 * @param share The share of the rating that may be used, above 0 and up to 1.
 * @throws PartsError "out-of-range" for a share outside this.
 * @example leastRating({ stress: 350, share: 0.7 }) // 500
 */
export function leastRating(use: { readonly stress: number; readonly share: number }): number {
  if (!(use.share > 0 && use.share <= 1)) {
    throw new PartsError("out-of-range", use.share, "The share of a rating that may be used lies above 0 and up to 1.");
  }
  return use.stress / use.share;
}

/**
 * The highest volts across a capacitor with dc and alternating volts together.
 *
 * @see the usual definition of a capacitor's voltage ratio: dc plus the peak of the ac, over the rating
 * @example peakStress({ dcVolts: 300, acVolts: 10 }) // 314.14
 */
export function peakStress(across: { readonly dcVolts: number; readonly acVolts: number }): number {
  return across.dcVolts + Math.SQRT2 * across.acVolts;
}
