import { PartsError } from "../problem.js";
import { DERATING_POLICIES, type DeratingRow, deratingShare } from "./deratingPolicies.js";
import { rungFor, stepUp } from "./ladder.js";
import { leastRating } from "./leastRating.js";

/**
 * How a rating is given room: so many rungs above an old rating, or no more than a share of the new one for a known
 * stress; a policy may also say where the watts begin to fall with heat and come to nothing.
 */
export type Derating =
  | { readonly steps: number }
  | { readonly share: number; readonly kneeCelsius?: number | null; readonly zeroCelsius?: number | null };

const HOW = "Write it like 1 step, 2 steps, 50% or 0.5, or name a policy.";

/**
 * The derating that a text says: `1 step`, `50%`, or the name of a policy together with the part it is asked for.
 *
 * @param of Whether a policy's share of watts or of volts is meant.
 * @param table The policies in force; the published ones unless the user's own are given.
 * @throws PartsError "unreadable" for other text, "unknown-name" when the policy says nothing on the part.
 * @example readDerating("NAVSEA SD-18", "film", "volts") // { share: 0.55, kneeCelsius: null, zeroCelsius: null }
 */
export function readDerating(
  text: string,
  part: string,
  of: "watts" | "volts",
  table: readonly DeratingRow[] = DERATING_POLICIES,
): Derating {
  const steps = /^(\d{1,2})\s*steps?$/i.exec(text.trim());
  if (steps) return { steps: Number(steps[1]) };
  const share = /^(\d*\.?\d+)\s*(%?)$/.exec(text.trim());
  if (share) return { share: Number(share[1]) / (share[2] ? 100 : 1) };
  if (!/[a-z]/i.test(text)) throw new PartsError("unreadable", text, HOW);
  const policies = new Set(table.map(({ policy }) => policy.toLowerCase()));
  if (!policies.has(text.trim().toLowerCase())) {
    throw new PartsError("unreadable", text, `${HOW} Policies: ${[...policies].join(", ")}.`);
  }
  const { share: allowed, kneeCelsius, zeroCelsius } = deratingShare({ policy: text, part, of }, table);
  return { share: allowed, kneeCelsius, zeroCelsius };
}

/**
 * The rating to buy: from an old rating so many rungs up, or the first rung of which a known stress is no more than the share.
 *
 * In warm surroundings a part may carry less: `heatShare` (see there) raises what is needed.
 *
 * @param part `amount` is the old rating (for steps) or the stress (for a share), in watts or volts.
 * @returns The rung to buy and the least rating that was needed.
 * @throws PartsError "nothing-fits" when the ladder ends below.
 * @example derate({ amount: 0.35, derating: { share: 0.55 }, heatShare: 1 }, [0.5, 1, 2]) // { rung: 1, least: 0.636 }
 */
export function derate(
  part: { readonly amount: number; readonly derating: Derating; readonly heatShare: number },
  ladder: readonly number[],
): { readonly rung: number; readonly least: number } {
  const { amount, derating, heatShare } = part;
  const cool =
    "steps" in derating
      ? stepUp(amount, ladder, derating.steps)
      : leastRating({ stress: amount, share: derating.share });
  if (heatShare <= 0)
    throw new PartsError("nothing-fits", "these surroundings", "They are as hot as the part may ever get.");
  const least = cool / heatShare;
  return { rung: rungFor(least, ladder), least };
}
