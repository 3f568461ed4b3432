/**
 * What is known of a part's place in the circuit; null is not known. Base units; volts and amperes as they are with
 * today's line.
 *
 * `volts` is the steady dc or rms across the part, `acVolts` the rms on top of it, `peakVolts` the highest it ever sees,
 * `warmUpVolts` that before the tubes draw current. `windingVolts` (rms, half the secondary, at the line the set was
 * made for) gives the warm-up peak where nobody measured it. `rectifierFarads` is the most the rectifier's sheet allows
 * behind it, `gridOhms` the resistor from the next grid, `loadAmps` the load of a rectifier, `plates` those of its stack.
 * `stringVolts` are the volts of all heaters of a string, `celsius` the air around the part. `onlyBarrier` says that this part alone stands between line and hand.
 */
export type Place = {
  readonly volts: number | null;
  readonly acVolts: number | null;
  readonly peakVolts: number | null;
  readonly warmUpVolts: number | null;
  readonly windingVolts: number | null;
  readonly amps: number | null;
  readonly watts: number | null;
  readonly rectifierFarads: number | null;
  readonly gridOhms: number | null;
  readonly loadAmps: number | null;
  readonly plates: number | null;
  readonly dropVolts: number | null;
  readonly stringVolts: number | null;
  readonly celsius: number | null;
  readonly onlyBarrier: boolean | null;
};

/** A place of which nothing is known. */
export const UNKNOWN_PLACE: Place = {
  volts: null,
  acVolts: null,
  peakVolts: null,
  warmUpVolts: null,
  windingVolts: null,
  amps: null,
  watts: null,
  rectifierFarads: null,
  gridOhms: null,
  loadAmps: null,
  plates: null,
  dropVolts: null,
  stringVolts: null,
  celsius: null,
  onlyBarrier: null,
};
