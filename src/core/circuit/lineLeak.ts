/**
 * The current that a sound capacitor passes from the line: 2 pi f C V.
 *
 * @param bypass Farads, volts rms, hertz.
 * @returns Amperes rms. A figure to look at; it approves nothing.
 * @example lineLeak({ farads: 0.01e-6, volts: 120, hertz: 60 }) // 0.000452
 */
export function lineLeak(bypass: { readonly farads: number; readonly volts: number; readonly hertz: number }): number {
  return 2 * Math.PI * bypass.hertz * bypass.farads * bypass.volts;
}

/**
 * The largest capacitor that passes no more than a given current from the line.
 *
 * @param limit Amperes rms, volts rms, hertz.
 * @returns Farads.
 * @example faradsForLeak({ amperes: 0.0005, volts: 120, hertz: 60 }) // 11.05e-9
 */
export function faradsForLeak(limit: {
  readonly amperes: number;
  readonly volts: number;
  readonly hertz: number;
}): number {
  return limit.amperes / (2 * Math.PI * limit.hertz * limit.volts);
}
