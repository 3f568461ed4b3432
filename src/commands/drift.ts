import { DRIFT_SHEET, type DriftRow, driftCounts } from "../core/index.js";
import { type Book, rulesOf, valuesOf } from "./book.js";
import { unanswered } from "./fill.js";
import { partsOnce } from "./once.js";
import { nothingToDo, type Step } from "./step.js";
import { rowsInPlace, writtenRow } from "./writeSheet.js";

/** How far the resistors of a set have drifted, counted by value, by watts and by section; a part in two lists once. */
export function driftOf(book: Book, short: string | null): readonly DriftRow[] {
  const rows = partsOnce(book).filter(({ values }) => values.project === short);
  return driftCounts(rows.map(unanswered), rulesOf(book, short));
}

/** Writes the counts of all sets to their sheet, over those that stand there. */
export function driftStep(book: Book): Step {
  const sets = [...new Set(valuesOf(book.parts).map(({ project }) => project))];
  const rows = sets.flatMap((short) => driftOf(book, short)).map((row) => writtenRow(DRIFT_SHEET, row));
  if (rows.length === 0) return nothingToDo("No resistor was read yet");
  const there = Array.from({ length: (book.drift?.end ?? 1) - 1 }, (_, index) => ({ at: index + 1 }));
  const changes = rowsInPlace(book.drift, DRIFT_SHEET, there, rows);
  return { name: "Write the drift to its sheet", changes, overwrites: [], notes: [] };
}
