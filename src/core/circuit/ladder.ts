import { PartsError } from "../problem.js";
import { figures } from "../quantity/figures.js";

/**
 * The rating a given number of steps up a ladder of ratings that are made; a rating between two rungs starts from the rung above it.
 *
 * Half a watt, one step up, is 1 W; 2 W is 3 W, since 4 W is not commonly made. A third of a watt starts at half a watt.
 *
 * @param ladder Ratings that are made, rising.
 * @param steps Whole steps up; 0 gives the rung itself.
 * @throws PartsError "nothing-fits" when the ladder ends below.
 * @example stepUp(0.5, [0.25, 0.5, 1, 2], 1) // 1
 */
export function stepUp(rating: number, ladder: readonly number[], steps: number): number {
  const start = ladder.findIndex((rung) => rung >= rating * (1 - 1e-9));
  const found = start < 0 ? undefined : ladder[start + steps];
  if (found === undefined) {
    const end = ladder[ladder.length - 1] ?? 0;
    const asked = figures(Number(rating.toPrecision(4)));
    const up = steps === 0 ? asked : `${asked} and ${steps} ${steps === 1 ? "step" : "steps"} up`;
    throw new PartsError("nothing-fits", up, `The largest rating that is made is ${end}.`);
  }
  return found;
}

/**
 * The smallest rating of a ladder that is not below what is needed.
 *
 * @throws PartsError "nothing-fits" when none is large enough.
 * @example rungFor(636.4, [400, 630, 1000]) // 1000
 */
export function rungFor(needed: number, ladder: readonly number[]): number {
  return stepUp(needed, ladder, 0);
}
