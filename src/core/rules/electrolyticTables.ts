/** TABLE: what old electrolytics were allowed: tolerance and leakage by rated volts. */
import type { Tolerance } from "../part.js";

/** Tolerance of an old electrolytic, by the rated volts up to which it holds. Source: from memory. */
export const ELECTROLYTIC_TOLERANCES: readonly { readonly upToVolts: number; readonly tolerance: Tolerance }[] = [
  { upToVolts: 50, tolerance: { minus: 0.1, plus: 2.5 } },
  { upToVolts: 350, tolerance: { minus: 0.1, plus: 1 } },
  { upToVolts: 450, tolerance: { minus: 0.1, plus: 0.5 } },
];

/**
 * Factor K of the leakage limit, by the rated volts up to which it holds: milliamperes = K x microfarads + 0.3.
 *
 * Source: JAN-C-62 as quoted on a radio list; the last row, read as 351 to 500 V, from a list post of 1999.
 */
export const ELECTROLYTIC_LEAK_FACTORS: readonly { readonly upToVolts: number; readonly factor: number }[] = [
  { upToVolts: 100, factor: 0.01 },
  { upToVolts: 250, factor: 0.02 },
  { upToVolts: 350, factor: 0.025 },
  { upToVolts: 500, factor: 0.04 },
];

/**
 * The leakage an old electrolytic is allowed, in amperes, after reforming at its rated volts.
 *
 * Null above 500 V, where the formula says nothing.
 *
 * @param part `farads` and rated `volts`.
 * @see JAN-C-62
 * @example electrolyticLeakAmps({ farads: 20e-6, volts: 450 }) // 0.0011
 */
export function electrolyticLeakAmps(part: { readonly farads: number; readonly volts: number }): number | null {
  const row = ELECTROLYTIC_LEAK_FACTORS.find(({ upToVolts }) => part.volts <= upToVolts);
  return row ? (row.factor * part.farads * 1e6 + 0.3) / 1000 : null;
}
