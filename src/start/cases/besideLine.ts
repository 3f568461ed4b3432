import { close, type FigureName, type ListedPart } from "../../core/index.js";
import type { Given } from "./given.js";

/** What a figure told by nothing but its unit is where the line prints another: the bench's, or the place's. */
const FOUND: readonly (readonly [printed: "value" | "volts" | "watts", told: FigureName, found: FigureName])[] = [
  ["value", "nominal", "reading"],
  ["volts", "ratedVolts", "volts"],
  ["watts", "watts", "lostWatts"],
];

/**
 * What is given beside a line that prints the same thing: a bare figure repeats it, another one is what was found there.
 *
 * @example besideLine({ ...given, bare: new Set(["ratedVolts"]) }, { ...line, volts: 600 }).figures.get("volts") // [250]
 */
export function besideLine(given: Given, line: ListedPart): Given {
  const figures = new Map(given.figures);
  for (const [printed, told, found] of FOUND) {
    const numbers = figures.get(told);
    const value = line[printed];
    if (!given.bare.has(told) || numbers?.length !== 1 || value === null || figures.has(found)) continue;
    if (close(numbers[0]!, value)) continue;
    figures.delete(told);
    figures.set(found, numbers);
  }
  return { ...given, figures };
}
