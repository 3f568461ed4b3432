import type { Corrected } from "../../commands/bringInList.js";
import type { DocumentReading, LineReading, Part, PartsRow } from "../../core/index.js";
import { rowOfPart } from "../../core/index.js";

/** A part that a line became, its place in the reading, and how it stands with what the person corrected. */
export type UnderstoodPart = {
  readonly index: number;
  readonly part: Part;
  readonly row: PartsRow;
  readonly isChecked: boolean;
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
    const cells = corrected.get(index);
    const understood = { index, part, row: { ...rowOfPart(part, "", []), ...cells }, isChecked: cells !== undefined };
    partsOf.set(line, [...(partsOf.get(line) ?? []), understood]);
  }
  return reading.lines.map((line) => {
    const parts = partsOf.get(line.number) ?? [];
    const isUnsure = line.became === "unclear" || parts.some(({ row }) => row.unsure !== null);
    return { line, parts, isUnsure };
  });
}
