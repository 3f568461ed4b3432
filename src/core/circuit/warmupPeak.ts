/**
 * The volts that the filter capacitors see before cold tubes draw current: the peak of the winding at today's line.
 *
 * 1.414 times the volts of one half of the secondary, times today's line over the line the transformer was wound for.
 * A tube rectifier's own drop takes a few volts off it; with silicon it comes at once.
 *
 * @param supply `windingVolts` rms from centre tap to one end (or of the whole winding before a bridge).
 * @see University of Queensland physics museum, electrolytic capacitor: 385 V winding, about 525 V in the first seconds
 * @example warmupPeak({ windingVolts: 350, lineVolts: 123, designVolts: 117 }) // 520.4
 */
export function warmupPeak(supply: {
  readonly windingVolts: number;
  readonly lineVolts: number;
  readonly designVolts: number;
}): number {
  return (Math.SQRT2 * supply.windingVolts * supply.lineVolts) / supply.designVolts;
}
