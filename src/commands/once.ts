import { type PARTS_SHEET, samePartGroups } from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { boughtByOther } from "./overview.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** The rows of Parts, a part that stands in two lists of its set once: the row that counts for it. */
export function partsOnce(book: Book): readonly PartRow[] {
  const byOther = boughtByOther(book);
  return (book.parts?.rows ?? []).filter(({ values }) => !byOther.has(values.id ?? ""));
}

/** The rows of the same part in the other lists of its set. */
export function otherRowsOf(book: Book, { values: own }: PartRow): readonly PartRow[] {
  const group = samePartGroups(valuesOf(book.parts)).find((rows) => rows.includes(own)) ?? [];
  return (book.parts?.rows ?? []).filter(({ values }) => values !== own && group.includes(values));
}

/** Rows with the same parts' rows in other lists, each once: what is read or decided at one holds for all. */
export function withOtherRows(book: Book, rows: readonly PartRow[]): readonly PartRow[] {
  const groups = samePartGroups(valuesOf(book.parts)).filter((group) =>
    rows.some(({ values }) => group.includes(values)),
  );
  if (groups.length === 0) return rows;
  const others = (book.parts?.rows ?? []).filter(({ values }) => groups.some((group) => group.includes(values)));
  return [...rows, ...others.filter((row) => !rows.includes(row))];
}

/** What a part is called in its lists. @example "R7 (R-3 in service folder)" */
export function nameInLists(book: Book, row: PartRow): string {
  const others = otherRowsOf(book, row).map(({ values }) => `${values.designator} in ${values.document}`);
  return [row.values.designator, others.length > 0 && `(${others.join(", ")})`].filter(Boolean).join(" ");
}
