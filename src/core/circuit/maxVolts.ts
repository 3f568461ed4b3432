/**
 * The volts a resistor may bear: what its watts allow, and never more than its body.
 *
 * The smaller of sqrt(watts x ohms) and the limit of the style. Below the critical resistance the watts decide, above it the body.
 *
 * @param bodyVolts The limit of the body or style; null or left out where none is known.
 * @returns Volts, dc or rms.
 * @see MIL-R-10509J 3.6; MIL-PRF-39005 3.5.8
 * @example maxVolts({ ohms: 100, watts: 0.25, bodyVolts: 250 }) // 5
 */
export function maxVolts(resistor: {
  readonly ohms: number;
  readonly watts: number;
  readonly bodyVolts?: number | null;
}): number {
  return Math.min(Math.sqrt(resistor.watts * resistor.ohms), resistor.bodyVolts ?? Number.POSITIVE_INFINITY);
}

/**
 * The resistance up to which the watts decide and above which the body's volts do.
 *
 * @see IEC 60115-1, critical resistance
 * @example criticalOhms({ watts: 0.5, bodyVolts: 350 }) // 245_000
 */
export function criticalOhms(style: { readonly watts: number; readonly bodyVolts: number }): number {
  return style.bodyVolts ** 2 / style.watts;
}
