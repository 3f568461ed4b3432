import { KINDS, type PARTS_SHEET, type PartsRow, READINGS_SHEET, readReading } from "../core/index.js";
import type { Book } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { nothingToDo, type Step } from "./step.js";
import { addRows, patchRows } from "./writeSheet.js";

/** A reading taken at the bench. `accuracy` is the meter's, as a ratio; `when` as the log shall say it. */
export type Taken = {
  readonly text: string;
  readonly inPlace: "in place" | "lifted";
  readonly accuracy: number | null;
  readonly when: string;
};

const kindOf = (row: PartsRow) => KINDS.find((kind) => kind === row.kind) ?? "other";

/**
 * Logs a reading: the log in Readings gets a row, and Parts shows it as the last.
 *
 * @param verdict What the reading says, as shown before Enter.
 * @throws PartsError "unreadable" where the text is no reading.
 */
export function logReadingStep(
  book: Book,
  row: ViewRow<typeof PARTS_SHEET>,
  taken: Taken,
  verdict: string | null,
): Step {
  if (!book.parts) return nothingToDo("There are no parts yet");
  const { id, designator, value } = row.values;
  const read = readReading(taken.text, value, kindOf(row.values));
  const { inPlace, accuracy, when } = taken;
  const cells = { reading: read.text, inPlace, ...(accuracy === null ? {} : { accuracy }) };
  const log = { when, id, designator, reading: read.text, size: read.value, inPlace, accuracy, verdict };
  return {
    name: `Log ${designator} ${read.text} ${inPlace}`,
    changes: [
      ...patchRows(book.parts, [{ at: row.at, cells: { ...cells, lifted: inPlace === "lifted" ? "yes" : null } }]),
      ...addRows(book.readings, READINGS_SHEET, [log]),
    ],
    overwrites: [],
    notes: inPlace === "lifted" ? [`${designator} has a lead lifted until you say it is back.`] : [],
  };
}

/** Says that the lifted leads of these rows are back. */
export function leadsBackStep(book: Book, rows: readonly ViewRow<typeof PARTS_SHEET>[]): Step {
  if (!book.parts || rows.length === 0) return nothingToDo("No lead is lifted");
  const names = rows.map((row) => row.values.designator).join(", ");
  const changes = patchRows(
    book.parts,
    rows.map((row) => ({ at: row.at, cells: { lifted: "" } })),
  );
  return { name: `${names}: lead is back`, changes, overwrites: [], notes: [] };
}
