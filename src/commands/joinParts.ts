import {
  type OtherSays,
  otherListCell,
  type PARTS_SHEET,
  type PartsRow,
  readOtherList,
  samePartGroups,
  writeOtherList,
} from "../core/index.js";
import type { Change } from "../hosts/host.js";
import { type Book, valuesOf } from "./book.js";
import { otherRows } from "./once.js";
import type { ViewRow } from "./openSheet.js";
import { nothingToDo, type Step } from "./step.js";
import { patchRows } from "./writeSheet.js";

type PartRow = ViewRow<typeof PARTS_SHEET>;

/** What rows of Parts are to say in "same part as", by id: another row's id, or null for none. */
export type Joins = ReadonlyMap<string, string | null>;

/**
 * The cells of Parts that change when rows are joined or parted: "same part as", and what other lists say of every part whose
 * rows say it no longer.
 */
export function joinChanges(book: Book, joins: Joins): readonly Change[] {
  const { parts } = book;
  if (!parts) return [];
  const joined = parts.rows.map(({ values }) =>
    joins.has(values.id ?? "") ? { ...values, sameAs: joins.get(values.id ?? "") ?? null } : values,
  );
  const groups = new Map(samePartGroups(joined).flatMap((group) => group.map((row) => [row, group] as const)));
  const patches = parts.rows.flatMap(({ at, values }, nth) => {
    const row = joined[nth]!;
    const says = otherListCell(row, groups.get(row)?.filter((each) => each !== row) ?? []);
    const cells = {
      ...(row.sameAs === values.sameAs ? {} : { sameAs: row.sameAs ?? "" }),
      ...(says === (values.otherList ?? "") ? {} : { otherList: says }),
    };
    return Object.keys(cells).length > 0 ? [{ at, cells }] : [];
  });
  return patchRows(parts, patches);
}

/** Joins that make two rows one part: the row of the later list names the other. */
export const joinOf = (one: PartsRow, other: PartsRow): Joins => new Map([[other.id ?? "", one.id]]);

/** Joins that part two rows again, whichever of them names the other. */
export function partingOf(one: PartsRow, other: PartsRow): Joins {
  const naming = [
    [one, other],
    [other, one],
  ].filter(([row, named]) => row!.sameAs !== null && row!.sameAs.trim() === named!.id);
  return new Map(naming.map(([row]) => [row!.id ?? "", null]));
}

/** Says by hand that two rows are one part. */
export function joinStep(book: Book, one: PartRow, other: PartRow): Step {
  const changes = joinChanges(book, joinOf(one.values, other.values));
  const name = `${one.values.designator} and ${other.values.designator} are the same part`;
  return changes.length > 0 ? { name, changes, overwrites: [], notes: [] } : nothingToDo("They are one already");
}

/** Writes anew what other lists say of each part, where a figure has changed since; null where nothing has. */
export function otherListsStep(book: Book): Step | null {
  const changes = joinChanges(book, new Map());
  const name = "Write anew what the other list says";
  return changes.length > 0 ? { name, changes, overwrites: [], notes: [] } : null;
}

/** Leaves what another list says of a field aside, or takes it into account again. */
export function leaveAsideStep(book: Book, row: PartRow, id: string, field: string, leftAside: boolean): Step {
  const { parts } = book;
  if (!parts) return nothingToDo("There are no parts yet");
  const changed = readOtherList(row.values.otherList).map((other): OtherSays => {
    if (other.id !== id) return other;
    return { id, says: other.says.map((saying) => (saying.field === field ? { ...saying, leftAside } : saying)) };
  });
  const cells = { otherList: writeOtherList(changed) };
  return {
    name: `${row.values.designator}: ${leftAside ? "leave aside" : "heed"} the ${field} of ${id}`,
    changes: patchRows(parts, [{ at: row.at, cells }]),
    overwrites: [],
    notes: [],
  };
}

/** Rows of other lists of its set that a part may be the same as: of its kind first, none that it is joined with. */
export function joinable(book: Book, row: PartRow): readonly PartRow[] {
  const own = otherRows(book).get(row.values) ?? [];
  const others = (book.parts?.rows ?? []).filter(
    (each) =>
      each.values.project === row.values.project &&
      each.values.document !== row.values.document &&
      each.values.id !== null &&
      !own.includes(each),
  );
  const isKind = (each: PartRow) => each.values.kind === row.values.kind;
  return [...others.filter(isKind), ...others.filter((each) => !isKind(each))];
}

/** The lists of a set, by the name of their document, in the order in which they were brought in. */
export const listsOf = (book: Book, short: string | null): readonly string[] => [
  ...new Set(
    valuesOf(book.parts).flatMap(({ project, document }) => (project === short && document ? [document] : [])),
  ),
];
