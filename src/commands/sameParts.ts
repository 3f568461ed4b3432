import {
  differenceText,
  emptyRow,
  type PairAnswer,
  type PartsRow,
  type RowPair,
  rowPairs,
  SAME_PARTS_SHEET,
  type SamePartsRow,
} from "../core/index.js";
import { type Book, valuesOf } from "./book.js";
import { type Joins, joinChanges, joinOf, partingOf } from "./joinParts.js";
import type { ViewRow } from "./openSheet.js";
import { counted, nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells, rowsInPlace, writtenRow } from "./writeSheet.js";

type Sheet = typeof SAME_PARTS_SHEET;
type PairRow = ViewRow<Sheet>;

/** From these confidences on a pair is sure, or likely. */
const SURE = 0.8;
const LIKELY = 0.5;

/** A pair as the sheet Same parts has it, and the two rows of Parts. */
export type SheetPair = {
  readonly row: PairRow;
  readonly one: PartsRow;
  readonly other: PartsRow;
  readonly state: "same part" | "another part" | "open";
};

const nameOf = (one: string | null, other: string | null) => `${one}|${other}`;

/** The pairs of a set as they stand: what Parts says in "same part as" decides, then what was said in the sheet. */
export function pairsOf(book: Book, short: string | null): readonly SheetPair[] {
  const byId = new Map(valuesOf(book.parts).map((row) => [row.id, row]));
  return (book.sameParts?.rows ?? []).flatMap((row) => {
    const { part, otherPart, said, project } = row.values;
    const [one, other] = [byId.get(part), byId.get(otherPart)];
    if (project !== short || !one || !other || part === null || otherPart === null) return [];
    const isJoined = partingOf(one, other).size > 0;
    const state = isJoined ? "same part" : said === "another part" ? "another part" : "open";
    return [{ row, one, other, state } as const];
  });
}

/** The rows of Same parts that tell of a part of one list alone. */
export const aloneIn = (book: Book, short: string | null): readonly SamePartsRow[] =>
  valuesOf(book.sameParts).filter(({ project, otherPart }) => project === short && otherPart === null);

/**
 * Compares the lists of a set and writes the pairs to Same parts, over those that stand there. What was said stays: confirmed
 * pairs stand, refused ones are kept and not proposed again.
 */
export function compareStep(book: Book, short: string | null): Step {
  const rows = valuesOf(book.parts).filter(({ project, id }) => project === short && id !== null);
  const refused = pairsOf(book, short).filter(({ state }) => state === "another part");
  const names = new Set(refused.map(({ one, other }) => nameOf(one.id, other.id)));
  const { pairs, alone } = rowPairs(rows, (one, other) => names.has(nameOf(one, other)));
  if (pairs.length === 0) return nothingToDo("No part stands in two lists of this set");
  const said = new Map(pairsOf(book, short).map(({ row, one, other }) => [nameOf(one.id, other.id), row.values.said]));
  const written = [
    ...pairs.map((pair) => pairCells(pair, short, said.get(nameOf(pair.one.id, pair.other.id)) ?? null)),
    ...refused.map(({ row }) => writtenRow(SAME_PARTS_SHEET, row.values)),
    ...alone.map((row) => writtenRow(SAME_PARTS_SHEET, aloneRow(row, short))),
  ];
  const differing = pairs.filter(({ differences }) => differences.length > 0).length;
  return {
    name: `Compare the lists of ${short}`,
    changes: sheetChanges(book, short, written),
    overwrites: [],
    notes: [
      `${counted(pairs.length, "pair")}, ${counted(alone.length, "part")} in one list alone.`,
      ...(differing > 0 ? [`In ${counted(differing, "pair")} the lists differ.`] : []),
    ],
  };
}

function pairCells(pair: RowPair, short: string | null, said: PairAnswer | null): RowCells<Sheet> {
  const { one, other, confidence, because, differences } = pair;
  const isSaid = confidence === 1;
  const howSure = confidence >= SURE ? "sure" : confidence >= LIKELY ? "likely" : "a guess";
  return writtenRow(SAME_PARTS_SHEET, {
    ...aloneRow(one, short),
    otherPart: other.id,
    otherDesignator: other.designator,
    otherDocument: other.document,
    otherPrinted: other.printed,
    howSure: isSaid ? "said by you" : howSure,
    sureness: confidence,
    because: because.join("; "),
    differs: differences.map((each) => differenceText(each, [one, other])).join("; "),
    said: isSaid ? "same part" : said,
  });
}

const aloneRow = ({ id, designator, document, printed }: PartsRow, short: string | null): SamePartsRow => ({
  ...emptyRow(SAME_PARTS_SHEET),
  project: short,
  part: id,
  designator,
  document,
  printed,
  because: "no partner in another list",
});

/** Rows of a set that is compared again take the place of its old ones; what is left over is emptied. */
function sheetChanges(book: Book, short: string | null, written: readonly RowCells<Sheet>[]): Step["changes"] {
  const old = (book.sameParts?.rows ?? []).filter(({ values }) => values.project === short);
  return rowsInPlace(book.sameParts, SAME_PARTS_SHEET, old, written);
}

/**
 * Says of pairs that they are the same part, or that they are not, or takes back what was said. One undo takes all back.
 *
 * A pair that is the same part is written to "same part as" in Parts, with what the other list says.
 */
export function sayPairsStep(book: Book, pairs: readonly SheetPair[], said: PairAnswer | null): Step {
  const { sameParts } = book;
  if (!sameParts || pairs.length === 0) return nothingToDo("No pair to say it of");
  const joins: Joins = new Map(
    pairs.flatMap(({ one, other }) => [...(said === "same part" ? joinOf(one, other) : partingOf(one, other))]),
  );
  const cells = { said: said ?? "" };
  return {
    name: nameOfSaying(pairs, said),
    changes: [
      ...patchRows(
        sameParts,
        pairs.map(({ row }) => ({ at: row.at, cells })),
      ),
      ...joinChanges(book, joins),
    ],
    overwrites: [],
    notes: [],
  };
}

function nameOfSaying(pairs: readonly SheetPair[], said: PairAnswer | null): string {
  const [only, ...more] = pairs;
  const what =
    more.length > 0 ? counted(pairs.length, "pair") : `${only!.one.designator} and ${only!.other.designator}`;
  if (said === null) return `Take back what was said of ${what}`;
  return said === "same part" ? `Confirm ${what}` : `${what}: another part`;
}

/** The open pairs that are at least so sure, and those that were called the same part in the sheet itself. */
export function toConfirm(pairs: readonly SheetPair[], least: number): readonly SheetPair[] {
  return pairs.filter(
    ({ state, row }) => state === "open" && (row.values.said === "same part" || (row.values.sureness ?? 0) >= least),
  );
}
