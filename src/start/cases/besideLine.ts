import { close, type FigureName, type ListedPart, type OfPart, saidFigures } from "../../core/index.js";
import type { Given } from "./given.js";

/** What a figure told by nothing but its unit is where the line prints another: the bench's, or the place's. */
const FOUND: readonly (readonly [printed: "value" | "volts" | "watts", told: FigureName, found: FigureName])[] = [
  ["value", "nominal", "reading"],
  ["volts", "ratedVolts", "volts"],
  ["watts", "watts", "lostWatts"],
];

/** What a line may say beyond what it prints of the part: what the bench showed, and the plates of a stack. */
const OF_A_NOTE: readonly FigureName[] = [
  "reading",
  "accuracy",
  "leakage",
  "esr",
  "plates",
  "forwardVolts",
  "reverseOhms",
  "strikeVolts",
];

/**
 * What is given, with what the line notes of the bench where nothing else tells it: "R8 270K 10%, reads 355K".
 *
 * @example withNotes(given, "R8 270K 10%, reads 355K", part).figures.get("reading") // [355e3]
 */
export function withNotes(given: Given, line: string, of: OfPart): Given {
  const noted = [...saidFigures(line, of)].filter(([name]) => OF_A_NOTE.includes(name) && !given.figures.has(name));
  return { ...given, figures: new Map([...given.figures, ...noted]) };
}

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
