/** Ripple and mean of a rectified supply with a capacitor first. */
export type Ripple = {
  readonly peakToPeakVolts: number;
  readonly rmsVolts: number;
  readonly meanVolts: number;
  readonly method: string;
};

const METHOD = "straight-line discharge over the whole period: reads high by the time the rectifier conducts";

/**
 * The ripple on the first filter capacitor, estimated.
 *
 * Stated method: the load draws its current evenly from the capacitor over one whole period of the ripple (the line's for
 * half wave, half of it for full wave), so it falls by I / (f C) in a straight line from the peak; the rms of a sawtooth is
 * a root of twelfth of it. The rectifier's drop and the winding's resistance are left out. The estimate is
 * never low: it reads high by the share of the period in which the rectifier conducts, against a circuit simulator 15 to
 * 20 % for half wave and 35 to 55 % for full wave with usual windings (`tests/oracles`).
 *
 * @param supply `peakVolts` of the rectified wave, load `amperes`, `farads`, line `hertz`, and whether both half waves are used.
 * @example rippleOf({ peakVolts: 350, amperes: 0.06, farads: 20e-6, hertz: 60, fullWave: true }).peakToPeakVolts // 25
 */
export function rippleOf(supply: {
  readonly peakVolts: number;
  readonly amperes: number;
  readonly farads: number;
  readonly hertz: number;
  readonly fullWave: boolean;
}): Ripple {
  const ripplesPerSecond = supply.hertz * (supply.fullWave ? 2 : 1);
  const peakToPeakVolts = supply.amperes / (ripplesPerSecond * supply.farads);
  return {
    peakToPeakVolts,
    rmsVolts: peakToPeakVolts / Math.sqrt(12),
    meanVolts: supply.peakVolts - peakToPeakVolts / 2,
    method: METHOD,
  };
}
