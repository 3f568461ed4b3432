import type { Kind } from "../../part.js";
import { PartsError } from "../../problem.js";
import { readValue } from "../../quantity/readValue.js";
import { MEASURE_OF } from "./context.js";
import type { Stated } from "./statedPart.js";

/** Part numbers and the value text each stands for, as the user gives them ("1006750-39" -> "2 k"). */
export type PartNumberTable = ReadonlyMap<string, string>;

/** Parts that state only a part number, with the value that the user's table has for it. A printed value is never changed. */
export function withPartNumbers(stated: readonly Stated[], table: PartNumberTable | undefined): readonly Stated[] {
  if (!table) return stated;
  return stated.map((entry) => {
    const text = entry.part.stockNumber ? table.get(entry.part.stockNumber) : undefined;
    const value =
      text !== undefined && entry.part.valueState === "missing" ? valueForKind(text, entry.part.kind) : null;
    if (value === null) return entry;
    const from = {
      ...entry.part.from,
      value: { by: "reference" as const, at: `part number ${entry.part.stockNumber}` },
    };
    return { ...entry, part: { ...entry.part, value, valueState: "stated", from } };
  });
}

function valueForKind(text: string, kind: Kind): number | null {
  if (!MEASURE_OF[kind]) return null;
  try {
    return readValue(text, { kind }).value;
  } catch (error) {
    if (error instanceof PartsError) return null;
    throw error;
  }
}
