import { COLUMN_FIELDS, type ColumnField } from "./columnWords.js";
import { columnAs } from "./guessMapping.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";

/** What a column is called: its head, or its place where it has none. */
export const columnName = ({ head, index }: Pick<OfferColumn, "head" | "index">): string =>
  head.replaceAll(";", ",") || `column ${index + 1}`;

/** How a vendor's columns are understood, as a cell that can be edited. @example "Art.: stock number; Price 10: price" */
export function writeMapping({ columns }: OfferMapping): string {
  return writeColumns(columns.map((column) => ({ name: columnName(column), field: column.field })));
}

/** The same for columns by name, as they are shown and corrected. */
export function writeColumns(columns: readonly { readonly name: string; readonly field: ColumnField }[]): string {
  return columns
    .filter(({ field }) => field !== "nothing")
    .map(({ name, field }) => `${name}: ${field}`)
    .join("; ");
}

/** The names of the columns that such a cell speaks of. @example namedColumns("Art.: stock number") // ["Art."] */
export const namedColumns = (cell: string | null): string[] => [...saidOf(cell).keys()];

const saidOf = (cell: string | null) =>
  new Map(
    (cell ?? "").split(";").flatMap((entry) => {
      const found = /^(.*):\s*(.*?)\s*$/.exec(entry.trim());
      return found ? [[found[1]!.trim(), found[2]!] as const] : [];
    }),
  );

/**
 * A mapping as guessed, with what such a cell says put in its place: columns by their heads, wherever they stand now. A
 * column that the cell does not name says nothing.
 *
 * @param cell Empty: the guess stands.
 */
export function withMapping(guessed: OfferMapping, cell: string | null): OfferMapping {
  const said = saidOf(cell);
  if (said.size === 0) return guessed;
  const columns = guessed.columns.map((column) => {
    const field = COLUMN_FIELDS.find((each) => each === said.get(columnName(column).trim())) ?? "nothing";
    return field === column.field ? column : columnAs(field, column.head, column.index);
  });
  return { ...guessed, columns };
}
