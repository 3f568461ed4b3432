import type { Series } from "./seriesOf.js";
import { placeNearest, placeUpTo } from "./seriesOf.js";

/** Which of two neighbours counts as nearest. */
export const NEAREST_RULES = ["ratio", "difference", "not below", "not above"] as const;
export type NearestRule = (typeof NEAREST_RULES)[number];

/** Two distances this close to each other are the same but for rounding: 20 µF lies between 18 and 22. */
const TIE = 1 - 1e-9;

/**
 * The value of a preferred series that is nearest to the one wanted, by ratio unless another rule is given.
 *
 * "By ratio" is what tolerance means: 56 k is 8 % above 52 k, 47 k is 10 % below it. "Difference" compares what is
 * missing in ohms or farads; "not below" and "not above" look to one side only. In a tie the smaller value wins:
 * 300 k lies as far from 270 k as from 330 k by difference.
 *
 * @param wanted Any positive value from 1e-15 to 1e15, in base units (ohms, farads, henries).
 * @returns The series value, in the same unit.
 * @throws PartsError "out-of-range" for a value that is not positive or beyond these limits.
 * @see IEC 60063:2015
 * @example nearest(52_000, SERIES.E12) // 56_000
 */
export function nearest(wanted: number, series: Series, rule: NearestRule = "ratio"): number {
  if (rule === "ratio") return series.values[placeNearest(wanted, series)]!;
  const place = placeUpTo(wanted, series);
  const below = series.values[place]!;
  const above = series.values[place + 1]!;
  if (rule === "difference") return above - wanted < (wanted - below) * TIE ? above : below;
  return rule === "not above" || below === wanted ? below : above;
}

/**
 * The values of a series on both sides of the one wanted; both are the value itself when the series has it.
 *
 * @param wanted As for nearest.
 * @throws PartsError "out-of-range" as nearest does.
 * @example neighbours(52_000, SERIES.E12) // { below: 47_000, above: 56_000 }
 */
export function neighbours(wanted: number, series: Series): { readonly below: number; readonly above: number } {
  return { below: nearest(wanted, series, "not above"), above: nearest(wanted, series, "not below") };
}
