import type { SourceLine } from "../sourceLine.js";
import type { ColumnField } from "./columnWords.js";
import { saysNothing } from "./fold.js";
import { cellsOf } from "./guessMapping.js";
import { columnName } from "./mappingText.js";
import type { OfferMapping } from "./offerColumn.js";

/** A column of a vendor's list to be shown: its place from 0, its name, what it is understood as, and what stands first in it. */
export type ShownColumn = {
  readonly index: number;
  readonly name: string;
  readonly field: ColumnField;
  readonly examples: readonly string[];
};

/** Every column of a list with so many examples of what stands in it. */
export function columnsShown(lines: readonly SourceLine[], mapping: OfferMapping, examples: number): ShownColumn[] {
  const body = lines.filter(({ number }) => number > (mapping.headLine ?? 0)).map(cellsOf);
  return mapping.columns.map((column) => {
    const filled = new Set<string>();
    for (const row of body) {
      const cell = row[column.index] ?? "";
      if (!saysNothing(cell)) filled.add(cell);
      if (filled.size === examples) break;
    }
    return { index: column.index, name: columnName(column), field: column.field, examples: [...filled] };
  });
}
