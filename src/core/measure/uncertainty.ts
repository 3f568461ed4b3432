/**
 * How far a meter's reading may be off: its share of the reading, its counts, and what the leads add.
 *
 * @param meter `share` of the reading (0.01 is 1 %), `counts` of the last digit, `resolution` of one count, `leadOhms` for two-wire readings of low ohms.
 * @returns In the reading's unit.
 * @example uncertaintyOf({ reading: 470_000, share: 0.01, counts: 2, resolution: 100 }) // 4_900
 */
export function uncertaintyOf(meter: {
  readonly reading: number;
  readonly share: number;
  readonly counts?: number;
  readonly resolution?: number;
  readonly leadOhms?: number;
}): number {
  return Math.abs(meter.reading) * meter.share + (meter.counts ?? 0) * (meter.resolution ?? 0) + (meter.leadOhms ?? 0);
}
