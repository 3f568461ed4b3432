import type { Span } from "../part.js";
import { PartsError } from "../problem.js";

/** How a reading is judged against its limits. */
export const VERDICT_RULES = ["four-way", "simple", "strict"] as const;
export type VerdictRule = (typeof VERDICT_RULES)[number];

/** What a reading says of a part. */
export type Verdict = "good" | "likely good" | "likely bad" | "bad" | "says nothing in place";

/**
 * Whether a lifted part is good, by its reading and by how far the meter may be off.
 *
 * "Four-way" guards both limits by the uncertainty: inside by more than it is good, inside by less likely good, outside by
 * less likely bad, outside by more bad. "Simple" takes the reading at its word. "Strict" calls good only what is good four-way.
 *
 * @param read The reading, its uncertainty and the window it should lie in; one unit for all. Limits belong to the window.
 * @throws PartsError "out-of-range" for a negative uncertainty.
 * @see ILAC-G8:09/2019 4.2.3 with a guard band as wide as the uncertainty
 * @example verdict({ reading: 10_950, uncertainty: 100, window: { min: 9_000, max: 11_000 } }, "four-way") // "likely good"
 */
export function verdict(
  read: { readonly reading: number; readonly uncertainty: number; readonly window: Span },
  rule: VerdictRule = "four-way",
): Verdict {
  const { reading, uncertainty, window } = read;
  if (!(uncertainty >= 0)) throw new PartsError("out-of-range", uncertainty, "An uncertainty is zero or more.");
  // How deep inside the window the reading lies; below zero it is outside.
  const depth = Math.min(reading - window.min, window.max - reading);
  if (rule === "simple") return depth >= 0 ? "good" : "bad";
  if (depth >= uncertainty) return "good";
  if (rule === "strict") return "bad";
  if (depth >= 0) return "likely good";
  return depth >= -uncertainty ? "likely bad" : "bad";
}
