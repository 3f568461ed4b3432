import type { Stages } from "./stages.js";

/** How many reasons lead. */
const LEADING = 2;

/**
 * The two reasons that weigh most: what was read or found, else what the use or the type demands, and what limits the new part.
 *
 * A part that stays has no new part to limit. The chain (`chainOf`) gives all of them.
 *
 * @example leadingReasons(stages) // ["reads 612 k, +30 %: bad", "it burns 0.133 W, 0.266 W at 50 % load"]
 */
export function leadingReasons({ decision, ratings, rule }: Stages): readonly string[] {
  const byUse = rule.decidedBy.action?.startsWith("use ") ? [rule.roleRow.because] : [];
  const told = decision.because.filter((why) => !why.startsWith("replaced "));
  const why = decision.judged.length > 0 ? told : [...byUse, ...told];
  const limits = decision.action === "keep" ? [] : ratings.because;
  return [...new Set([...why.slice(0, 1), ...limits, ...why.slice(1)])].slice(0, LEADING);
}
