import { type CrosswalkPair, crosswalk } from "../crosswalk/crosswalk.js";
import type { ListedPart } from "../part.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { listedOfRow } from "./listedOfRow.js";
import { type RowDifference, rowDifferences } from "./rowDifferences.js";
import { samePartGroups } from "./samePart.js";

/** Two rows of Parts that are, or may be, one part; `confidence` from 0 to 1, 1 where the sheet says so. */
export type RowPair = {
  readonly one: PartsRow;
  readonly other: PartsRow;
  readonly confidence: number;
  readonly because: readonly string[];
  readonly differences: readonly RowDifference[];
};

/** The parts of all lists of one set, paired; `alone` are rows without a partner. */
export type RowPairs = { readonly pairs: readonly RowPair[]; readonly alone: readonly PartsRow[] };

/**
 * Which rows of the lists of one set are the same part: each list is compared with what the lists before it hold.
 *
 * Pairs that the rows name in "same part as" stand; pairs that were refused are not proposed again.
 *
 * @param rows The rows of one set, of all its documents.
 * @param isRefused Whether the person said that two rows, by id, are different parts.
 */
export function rowPairs(rows: readonly PartsRow[], isRefused: (one: string, other: string) => boolean): RowPairs {
  const documents = [...new Set(rows.map(({ document }) => document))];
  const groups = samePartGroups(rows);
  const isJoined = (a: PartsRow, b: PartsRow) => groups.some((group) => group.includes(a) && group.includes(b));
  let known: readonly PartsRow[] = rows.filter(({ document }) => document === documents[0]);
  const pairs: RowPair[] = [];
  for (const document of documents.slice(1)) {
    const own = rows.filter((row) => row.document === document);
    const found = compared(known, own, isJoined, isRefused);
    pairs.push(...found);
    known = [...known, ...own.filter((row) => !found.some(({ other }) => other === row))];
  }
  return { pairs, alone: known.filter((row) => !pairs.some(({ one }) => one === row)) };
}

function compared(
  rows: readonly PartsRow[],
  others: readonly PartsRow[],
  isJoined: (a: PartsRow, b: PartsRow) => boolean,
  isRefused: (one: string, other: string) => boolean,
): readonly RowPair[] {
  const rowOf = new Map<ListedPart, PartsRow>();
  const listed = (row: PartsRow) => {
    const part = listedOfRow(row);
    rowOf.set(part, row);
    return part;
  };
  const { pairs } = crosswalk(rows.map(listed), others.map(listed), (a, b) => {
    const [one, other] = [rowOf.get(a)!, rowOf.get(b)!];
    if (isJoined(one, other)) return "same";
    return isRefused(one.id ?? "", other.id ?? "") ? "another" : null;
  });
  return pairs.map(({ factory, service, confidence, because }: CrosswalkPair) => {
    const [one, other] = [rowOf.get(factory)!, rowOf.get(service)!];
    return { one, other, confidence, because, differences: rowDifferences(one, other) };
  });
}
