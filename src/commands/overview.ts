import { type PartsRow, type SamePartsRow, spokenFor } from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import { isTheirs } from "./fill.js";
import { hadByPart } from "./had.js";

/** How far the job is: what each screen's count counts. */
export type Overview = {
  readonly parts: number;
  readonly decided: number;
  readonly inHand: number;
  readonly fitted: number;
  readonly unclear: number;
  /** True where a set has two lists that were not compared yet. */
  readonly toCompare: boolean;
  readonly toPair: number;
  readonly toDecide: number;
  readonly toRead: number;
  readonly toFind: number;
  readonly onTheWay: number;
  readonly toFit: number;
};

const DECIDED = ["keep", "replace"];

/** True for a part that is bought: one to be replaced. */
export const isBought = (row: PartsRow): boolean => row.action === "replace";

/** The ids of rows whose part stands in another list of its set too, and is counted, bought and fitted by its row there. */
export function boughtByOther(book: Book): ReadonlySet<string> {
  const had = hadByPart(book);
  return spokenFor(valuesOf(book.parts), {
    said: isSaid(book),
    bought: isBought,
    settled: (row) => row.fitted !== null || (row.came ?? 0) > 0 || had.has(row.id ?? ""),
  });
}

/** Which rows have an action that the user typed. */
function isSaid(book: Book): (row: PartsRow) => boolean {
  const rowOf = new Map((book.parts?.rows ?? []).map((row) => [row.values, row]));
  return (values) => {
    const row = rowOf.get(values);
    return row !== undefined && isTheirs(row, "action");
  };
}

const NEVER_READ = ["tube", "lamp", "switch", "other"];

/** True for a part that a meter can say something of: one with a value, or of a kind that is open or whole. */
export const canBeRead = (row: PartsRow): boolean => row.value !== null || !NEVER_READ.includes(row.kind ?? "other");

/** True for a part that the bench has still to read. */
export const isToRead = (row: PartsRow): boolean =>
  (row.action === "test" || row.action === "lift") &&
  row.fitted === null &&
  (row.reading === null || row.action === "lift");

/** True for a part that waits for a person: the rules ask, or something in its line is unsure. */
export const isToDecide = (row: PartsRow): boolean => row.action === "ask" || row.action === null;

/** True for a part that is in the hand and not yet in the set. */
export const isToFit = (row: PartsRow): boolean =>
  isBought(row) && row.fitted === null && (row.came ?? 0) > 0 && (row.came ?? 0) >= (row.quantity ?? 1);

/** True where the rows of one set come from more than one document. */
function hasTwoLists(rows: readonly PartsRow[]): boolean {
  const listOf = new Map<string | null, string>();
  return rows.some(({ project, document }) => {
    if (document === null) return false;
    const first = listOf.get(project) ?? document;
    listOf.set(project, first);
    return first !== document;
  });
}

/** True for a pair of Same parts that waits for a person: more than a guess, and nothing said of it. */
const isToPair = ({ otherPart, said, howSure }: SamePartsRow): boolean =>
  otherPart !== null && said === null && howSure !== "a guess";

/** Counts over all sets, or over one; a part that stands in two lists of its set counts once. */
export function overviewOf(book: Book, short: string | null = null): Overview {
  const ofSet = <R extends { readonly project: string | null }>(rows: readonly R[]) =>
    rows.filter((row) => short === null || row.project === short);
  const byOther = boughtByOther(book);
  const paired = ofSet(valuesOf(book.sameParts));
  const parts = ofSet(valuesOf(book.parts)).filter(({ id }) => !byOther.has(id ?? ""));
  const count = (fits: (row: PartsRow) => boolean) => parts.filter(fits).length;
  return {
    parts: parts.length,
    decided: count((row) => DECIDED.includes(row.action ?? "")),
    inHand: count((row) => (row.came ?? 0) > 0),
    fitted: count((row) => row.fitted !== null),
    unclear: ofSet(valuesOf(book.lines)).filter((line) => line.became === "unclear").length,
    toCompare: paired.length === 0 && hasTwoLists(ofSet(valuesOf(book.parts))),
    toPair: paired.filter(isToPair).length,
    toDecide: count(isToDecide),
    toRead: count(isToRead),
    toFind: count((row) => isBought(row) && row.offer === null && row.fitted === null),
    onTheWay: valuesOf(book.order).filter((line) => line.state === "on the way").length,
    toFit: count(isToFit),
  };
}
