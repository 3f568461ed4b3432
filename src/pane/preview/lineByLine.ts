import type { Corrected } from "../../commands/bringInList.js";
import type { CorrectedCells, DocumentReading, LineReading, Part, PartsRow } from "../../core/index.js";
import { rowOfPart } from "../../core/index.js";

/** A part that a line became, its place in the reading, and what the person corrected of it; null where nothing. */
export type UnderstoodPart = {
  readonly index: number;
  readonly part: Part;
  readonly corrected: CorrectedCells | null;
};

/** One line of the source, what became of it, and whether a person should look at it. */
export type UnderstoodLine = {
  readonly line: LineReading;
  readonly parts: readonly UnderstoodPart[];
  readonly isUnsure: boolean;
};

/** A reading line by line, in the order of the source. */
export function lineByLine(reading: DocumentReading, corrected: Corrected): readonly UnderstoodLine[] {
  const partsOf = new Map<number, UnderstoodPart[]>();
  for (const [index, part] of reading.parts.entries()) {
    const line = reading.lineOfPart[index] ?? 0;
    const understood = { index, part, corrected: corrected.get(index) ?? null };
    partsOf.set(line, [...(partsOf.get(line) ?? []), understood]);
  }
  return reading.lines.map((line) => {
    const parts = partsOf.get(line.number) ?? [];
    return { line, parts, isUnsure: line.became === "unclear" || parts.some(isUnsure) };
  });
}

/** True where something of a part is unsure and no person has settled it. */
export function isUnsure({ part, corrected }: UnderstoodPart): boolean {
  return corrected?.unsure === undefined ? part.warnings.length > 0 : corrected.unsure !== null;
}

/** A part's row as it stands with what the person corrected. */
export const rowAsCorrected = ({ part, corrected }: UnderstoodPart): PartsRow => ({
  ...rowOfPart(part, "", []),
  ...corrected,
});
