import { OTHER_TECHNOLOGIES } from "./otherTechnologies.js";
import { RESISTOR_TECHNOLOGIES } from "./resistorTechnologies.js";
import type { Technology } from "./technology.js";

/** All technologies of new parts that a rule can name, by id (`metal_film`, `y_class`). */
export const TECHNOLOGIES: readonly Technology[] = [...RESISTOR_TECHNOLOGIES, ...OTHER_TECHNOLOGIES];

const BY_ID: ReadonlyMap<string, Technology> = new Map(TECHNOLOGIES.map((row) => [row.id, row]));

/** What is known of a technology, by its id; undefined for an id that no row has. @example technologyOf("metal_film")?.label // "Metal film" */
export function technologyOf(id: string): Technology | undefined {
  return BY_ID.get(id);
}
