import { COLUMN_FIELDS } from "./columnWords.js";
import type { OfferColumn, OfferMapping } from "./offerColumn.js";

/** What a column is called: its head, or its place where it has none. */
export const columnName = ({ head, index }: Pick<OfferColumn, "head" | "index">): string =>
  head.replaceAll(";", ",") || `column ${index + 1}`;

/** How a vendor's columns are understood, as a cell that can be edited. @example "Art.: stock number; Price 10: price" */
export function writeMapping({ columns }: OfferMapping): string {
  return columns
    .filter(({ field }) => field !== "nothing")
    .map((column) => `${columnName(column)}: ${column.field}`)
    .join("; ");
}

/**
 * A mapping as guessed, with what such a cell says put in its place: columns by their heads, wherever they stand now. A
 * column that the cell does not name says nothing.
 *
 * @param cell Empty: the guess stands.
 */
export function withMapping(guessed: OfferMapping, cell: string | null): OfferMapping {
  const entries = (cell ?? "").split(";").map((entry) => /^(.*):\s*(.*?)\s*$/.exec(entry.trim()));
  const said = new Map(entries.flatMap((found) => (found ? [[found[1]!.trim(), found[2]!] as const] : [])));
  if (said.size === 0) return guessed;
  const columns = guessed.columns.map((column) => {
    const field = COLUMN_FIELDS.find((each) => each === said.get(columnName(column).trim()));
    return { ...column, field: field ?? ("nothing" as const) };
  });
  return { ...guessed, columns };
}
