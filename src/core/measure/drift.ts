import { PartsError } from "../problem.js";
import { figures } from "../quantity/figures.js";

/**
 * How far a reading lies from the nominal value, as a ratio: 612 k read on a 470 k part is +0.30.
 *
 * @throws PartsError "out-of-range" when the nominal value is not positive.
 * @example drift({ nominal: 470_000, reading: 612_000 }) // 0.302
 */
export function drift(part: { readonly nominal: number; readonly reading: number }): number {
  if (!(part.nominal > 0)) {
    throw new PartsError("out-of-range", part.nominal, "A nominal value lies above zero.");
  }
  return part.reading / part.nominal - 1;
}

/** From here on a drift is told as so many times the value: hardly a drift any more, and no percentage that one can picture. */
const TIMES_FROM = 9;

/** A drift in percent with its sign, to two figures; from ten times the value on, how many times. @example driftText(0.3021) // "+30 %" */
export function driftText(ratio: number): string {
  if (ratio >= TIMES_FROM) return `${figures(Number((ratio + 1).toPrecision(2)))} times`;
  const percent = Number((Math.abs(ratio) * 100).toPrecision(2));
  return percent === 0 ? "0 %" : `${ratio < 0 ? "−" : "+"}${figures(percent)} %`;
}

/** How the drift of many parts looks: how many, the one in the middle, how many beyond their limit. */
export type DriftSummary = { readonly count: number; readonly median: number; readonly beyond: number };

/**
 * The drift of many parts together, null when there are none.
 *
 * Counts, not percentages: under twenty parts a percentage says more than it knows.
 *
 * @param parts Each with the limit (a ratio, both ways) beyond which it counts as drifted.
 * @example driftSummary([{ nominal: 100, reading: 130, limit: 0.2 }]) // { count: 1, median: 0.3, beyond: 1 }
 */
export function driftSummary(
  parts: readonly { readonly nominal: number; readonly reading: number; readonly limit: number }[],
): DriftSummary | null {
  if (parts.length === 0) return null;
  const drifts = parts.map(drift);
  const beyond = drifts.filter((each, index) => Math.abs(each) > parts[index]!.limit * (1 + 1e-9)).length;
  return { count: parts.length, median: median(drifts), beyond };
}

function median(numbers: readonly number[]): number {
  const rising = [...numbers].sort((a, b) => a - b);
  const middle = Math.floor(rising.length / 2);
  return rising.length % 2 ? rising[middle]! : (rising[middle - 1]! + rising[middle]!) / 2;
}
