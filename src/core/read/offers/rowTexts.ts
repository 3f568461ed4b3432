import type { ColumnField } from "./columnWords.js";
import { saysNothing } from "./fold.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";

/** A cell that says something, and the column it stands in. */
export type FieldCell = { readonly column: OfferColumn; readonly text: string };

/** A row by the fields of its columns; cells that say nothing are left out. */
export type RowTexts = {
  readonly of: (...fields: readonly ColumnField[]) => readonly FieldCell[];
  readonly first: (field: ColumnField) => string | null;
  /** The cells of all these fields as one text. */
  readonly joined: (...fields: readonly ColumnField[]) => string;
};

const NONE: readonly FieldCell[] = [];

/** The cells of a row by what their columns hold. */
export function rowTexts(cells: readonly string[], { columns }: OfferMapping): RowTexts {
  const byField = new Map<ColumnField, FieldCell[]>();
  for (const column of columns) {
    const text = cells[column.index] ?? "";
    if (column.field === "nothing" || saysNothing(text)) continue;
    const known = byField.get(column.field);
    if (known) known.push({ column, text });
    else byField.set(column.field, [{ column, text }]);
  }
  const ofOne = (field: ColumnField) => byField.get(field) ?? NONE;
  return {
    of: (...fields) => (fields.length === 1 ? ofOne(fields[0]!) : fields.flatMap(ofOne)),
    first: (field) => ofOne(field)[0]?.text ?? null,
    joined: (...fields) => {
      let text = "";
      for (const field of fields)
        for (const cell of ofOne(field)) text = text === "" ? cell.text : `${text}; ${cell.text}`;
      return text;
    },
  };
}
