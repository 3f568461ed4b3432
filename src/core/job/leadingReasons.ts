import type { Stages } from "./stages.js";

/**
 * The reasons that weigh most: what decided the action, and the limit that decided the new part.
 *
 * A part that stays has no new part to limit. The chain (`chainOf`) gives all of them.
 *
 * @example leadingReasons(stages) // ["reads 612 k, +30 %: bad", "250 V would be all of a 1/2 W body's limit"]
 */
export function leadingReasons({ decision, ratings }: Stages): readonly string[] {
  const limit = decision.action === "keep" ? null : (ratings.decides ?? null);
  return [...new Set([decision.leads, ...(limit === null ? [] : [limit])])];
}
