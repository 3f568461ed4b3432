import { CAUTIONS, type PARTS_SHEET, type PartsRow } from "../core/index.js";
import type { Book } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { nothingToDo, type Step } from "./step.js";
import { patchRows } from "./writeSheet.js";

/** The cautions that stand in a row's "look" cell. */
export const cautionsOf = (row: PartsRow) => CAUTIONS.filter(({ text }) => row.look?.includes(text));

/** The stops of a row that were not ticked yet. */
export function openStops(row: PartsRow): readonly (typeof CAUTIONS)[number][] {
  const seen = (row.stopsSeen ?? "").split(/[\s,]+/);
  return cautionsOf(row).filter(({ id, level }) => level === "stop" && !seen.includes(id));
}

/** Ticks a stop of a part, or takes the tick back. */
export function tickStopStep(book: Book, row: ViewRow<typeof PARTS_SHEET>, id: string, isTicked: boolean): Step {
  if (!book.parts) return nothingToDo("There are no parts yet");
  const seen = new Set((row.values.stopsSeen ?? "").split(/[\s,]+/).filter(Boolean));
  if (isTicked) seen.add(id);
  else seen.delete(id);
  const cells = { stopsSeen: [...seen].join(" ") };
  return {
    name: `${isTicked ? "Tick" : "Untick"} a stop of ${row.values.designator}`,
    changes: patchRows(book.parts, [{ at: row.at, cells }]),
    overwrites: [],
    notes: [],
  };
}

/**
 * Marks a part as fitted; only once every stop of it is ticked.
 *
 * @param fitted When, as the row shall say it; `reading` of the new part, or empty.
 */
export function fittedStep(
  book: Book,
  row: ViewRow<typeof PARTS_SHEET>,
  fitted: { readonly when: string; readonly reading: string },
): Step {
  const stops = openStops(row.values);
  if (!book.parts) return nothingToDo("There are no parts yet");
  if (stops.length > 0) return nothingToDo("Tick its stops first");
  const cells = { fitted: fitted.when, fittedReading: fitted.reading || null };
  return {
    name: `Fitted ${row.values.designator}`,
    changes: patchRows(book.parts, [{ at: row.at, cells }]),
    overwrites: [],
    notes: [],
  };
}
