/**
 * The series resistance at which a capacitor's loss reaches a given dissipation factor.
 *
 * Dissipation factor times the reactance: tan delta / (2 pi f C). What factor is still good is the user's to set.
 *
 * @param part Farads, hertz (120 for an electrolytic on a full-wave supply), dissipation factor (0.15 is 15 %).
 * @returns Ohms.
 * @see IEC 60384-1, tangent of the loss angle
 * @example esrLimit({ farads: 20e-6, hertz: 120, dissipation: 0.15 }) // 9.95
 */
export function esrLimit(part: {
  readonly farads: number;
  readonly hertz: number;
  readonly dissipation: number;
}): number {
  return part.dissipation / (2 * Math.PI * part.hertz * part.farads);
}
