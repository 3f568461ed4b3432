import { PartsError } from "../problem.js";
import { rungFor } from "./ladder.js";
import { leastRating } from "./leastRating.js";

/**
 * The rating in volts to buy for a capacitor: the first on the ladder that bears the old rating, the steady volts with their margin, and the peak.
 *
 * @param needs `oldVolts` is the printed rating; `steadyVolts` what stands across it in service, of which at most `share`
 * of the new rating is used (0.9 for an electrolytic); `peakVolts` what it must outlive while tubes are cold; `floorVolts`
 * the lowest rating bought at all. Each may be left out, but not the first three together.
 * @param ladder Ratings that are made, rising.
 * @throws PartsError "conflict" when nothing is known, "nothing-fits" when no rating on the ladder is high enough.
 * @example newVolts({ steadyVolts: 350, share: 0.9, peakVolts: 465 }, [350, 400, 450, 500]) // 500
 */
export function newVolts(
  needs: {
    readonly oldVolts?: number | null;
    readonly steadyVolts?: number | null;
    readonly peakVolts?: number | null;
    readonly floorVolts?: number | null;
    readonly share?: number;
  },
  ladder: readonly number[],
): number {
  const steady = needs.steadyVolts ? leastRating({ stress: needs.steadyVolts, share: needs.share ?? 1 }) : 0;
  const needed = Math.max(needs.oldVolts ?? 0, steady, needs.peakVolts ?? 0);
  if (needed <= 0) {
    throw new PartsError("conflict", "No volts", "Give the old rating, the volts in service, or the warm-up peak.");
  }
  return rungFor(Math.max(needed, needs.floorVolts ?? 0), ladder);
}
