/**
 * How far a leaking coupling capacitor lifts the grid behind it: the leakage current through the grid resistor.
 *
 * @param coupling `volts` across the capacitor, its `insulationOhms`, and `gridOhms` behind it.
 * @returns Volts at the grid, by the divider of the two resistances.
 * @example gridShift({ volts: 250, insulationOhms: 100e6, gridOhms: 470_000 }) // 1.17
 */
export function gridShift(coupling: {
  readonly volts: number;
  readonly insulationOhms: number;
  readonly gridOhms: number;
}): number {
  return (coupling.volts * coupling.gridOhms) / (coupling.insulationOhms + coupling.gridOhms);
}

/**
 * The insulation a coupling capacitor needs so that it lifts the grid by no more than a given amount.
 *
 * The trade's 200 megohms is this rule: 250 V, 470 k and half a volt ask for 235.
 *
 * @returns Ohms.
 * @example insulationFor({ volts: 250, gridOhms: 470_000, shiftVolts: 0.5 }) // 234.5e6
 */
export function insulationFor(coupling: {
  readonly volts: number;
  readonly gridOhms: number;
  readonly shiftVolts: number;
}): number {
  return (coupling.gridOhms * (coupling.volts - coupling.shiftVolts)) / coupling.shiftVolts;
}

/**
 * The leakage current that a rule of the kind "so much for each microfarad-volt, plus so much" allows.
 *
 * @param part Farads and rated volts.
 * @param rule `perCoulomb` in amperes for each coulomb (the same figure as microamperes for each microfarad-volt), `plusAmperes`.
 * @returns Amperes.
 * @example leakByCharge({ farads: 20e-6, volts: 450 }, { perCoulomb: 0.05, plusAmperes: 250e-6 }) // 0.0007
 */
export function leakByCharge(
  part: { readonly farads: number; readonly volts: number },
  rule: { readonly perCoulomb: number; readonly plusAmperes: number },
): number {
  return rule.perCoulomb * part.farads * part.volts + rule.plusAmperes;
}
