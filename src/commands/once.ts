import { type PARTS_SHEET, type PartsRow, samePartGroups } from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { boughtByOther } from "./overview.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** The rows of Parts, a part that stands in two lists of its set once: the row that counts for it. */
export function partsOnce(book: Book): readonly PartRow[] {
  const byOther = boughtByOther(book);
  return (book.parts?.rows ?? []).filter(({ values }) => !byOther.has(values.id ?? ""));
}

/** The rows of each part that stands in several lists of its set: by one of its rows, all others. */
export function otherRows(book: Book): ReadonlyMap<PartsRow, readonly PartRow[]> {
  const rowOf = new Map((book.parts?.rows ?? []).map((row) => [row.values, row]));
  return new Map(
    samePartGroups(valuesOf(book.parts)).flatMap((group) =>
      group.map((own) => [own, group.filter((each) => each !== own).map((each) => rowOf.get(each)!)] as const),
    ),
  );
}

/** Rows with the same parts' rows in other lists, each once: what is read or decided at one holds for all. */
export function withOtherRows(book: Book, rows: readonly PartRow[]): readonly PartRow[] {
  const all = otherRows(book);
  const others = new Set(rows.flatMap(({ values }) => all.get(values) ?? []));
  return [...rows, ...(book.parts?.rows ?? []).filter((row) => others.has(row) && !rows.includes(row))];
}

/** What parts are called in their lists. @example namesInLists(book)(row) // "R7 (R-3 in service folder)" */
export function namesInLists(book: Book): (row: PartRow) => string {
  const all = otherRows(book);
  return ({ values }) => {
    const others = (all.get(values) ?? []).map((other) => `${other.values.designator} in ${other.values.document}`);
    return [values.designator, others.length > 0 && `(${others.join(", ")})`].filter(Boolean).join(" ");
  };
}
