import type { ColumnField } from "./columnWords.js";
import { saysNothing } from "./fold.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";

/** A cell that says something, and the column it stands in. */
export type FieldCell = { readonly column: OfferColumn; readonly text: string };

/** A row by the fields of its columns; cells that say nothing are left out. */
export type RowTexts = {
  readonly all: readonly FieldCell[];
  readonly of: (...fields: readonly ColumnField[]) => readonly FieldCell[];
  readonly first: (field: ColumnField) => string | null;
  /** The cells of all these fields as one text. */
  readonly joined: (...fields: readonly ColumnField[]) => string;
};

/** The cells of a row by what their columns hold. */
export function rowTexts(cells: readonly string[], { columns }: OfferMapping): RowTexts {
  const all = columns
    .map((column) => ({ column, text: cells[column.index] ?? "" }))
    .filter(({ text }) => !saysNothing(text));
  const of = (...fields: readonly ColumnField[]) => all.filter(({ column }) => fields.includes(column.field));
  return {
    all,
    of,
    first: (field) => of(field)[0]?.text ?? null,
    joined: (...fields) =>
      of(...fields)
        .map(({ text }) => text)
        .join("; "),
  };
}
