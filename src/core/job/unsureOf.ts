import { writeWarnings } from "../present/warningWords.js";
import { lower } from "./oneLine.js";
import type { Stages } from "./stages.js";

/**
 * What is not sure of a part, in words: what its line leaves in doubt, and a type that the line does not plainly say.
 *
 * @example unsureOf(stages) // ["hard to read: 47OK", "taken for carbon composition resistor, likely"]
 */
export function unsureOf({ part, rule }: Stages): readonly string[] {
  const { sure } = part.className;
  const isPlain = sure === undefined || sure === "sure" || rule.classRow.id === "unknown";
  return [
    ...part.warnings.map((warning) => writeWarnings([warning])),
    ...(isPlain ? [] : [`taken for ${lower(rule.classRow.label)}, ${sure}`]),
  ];
}
