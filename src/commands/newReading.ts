import {
  attempt,
  kindNamed,
  type PARTS_SHEET,
  type PartsRow,
  READINGS_SHEET,
  readReading,
  readTolerance,
  verdict,
  windowOf,
} from "../core/index.js";
import type { Book } from "./book.js";
import type { ViewRow } from "./openSheet.js";
import { nothingToDo, type Step } from "./step.js";
import { addRows, patchRows } from "./writeSheet.js";

/**
 * What a reading says of a new part, before it is fitted: within its tolerance or not, by the meter's word.
 *
 * @throws PartsError "unreadable" where the text is no reading.
 * @example newPartVerdict(row, "4.8 k") // "+2.1 %, within ±5 %"
 */
export function newPartVerdict(row: PartsRow, text: string): string {
  const { newValue, newSize, newTolerance } = row;
  const kind = kindNamed(row.kind);
  const { state, value } = readReading(text, newValue, kind);
  if (state !== "value" || value === null)
    return state === "unsteady" ? "jumps: do not fit it" : `${state}: do not fit it`;
  if (newSize === null) return "no value to hold it against";
  const off = Number(((value / newSize - 1) * 100).toPrecision(2));
  const far = `${off > 0 ? "+" : ""}${off} %`;
  if (newTolerance === null) return `${far}, no tolerance to hold it against`;
  const window = windowOf(newSize, readTolerance(newTolerance));
  const isGood = verdict({ reading: value, uncertainty: 0, window }, "simple") === "good";
  return `${far}, ${isGood ? "within" : "outside"} ${newTolerance}`;
}

/** Logs the reading of a new part that came: in Readings, and at its part under "fitted reading". The old part's own reading stays. */
export function newReadingStep(book: Book, row: ViewRow<typeof PARTS_SHEET>, text: string, when: string): Step {
  const reading = text.trim();
  if (!book.parts || reading === "") return nothingToDo("No reading yet");
  return attempt(
    () => loggedStep(book, book.parts!, row, { when, reading, verdict: newPartVerdict(row.values, reading) }),
    ({ message }) => nothingToDo(message),
  );
}

type NewReading = { readonly when: string; readonly reading: string; readonly verdict: string };

function loggedStep(
  { readings }: Book,
  parts: NonNullable<Book["parts"]>,
  { at, values: { id, designator, offer } }: ViewRow<typeof PARTS_SHEET>,
  read: NewReading,
): Step {
  const log = { ...read, id, designator, remark: `new part, ${offer ?? "no offer"}` };
  return {
    name: `Log the new ${designator}: ${read.reading}, ${read.verdict}`,
    changes: [
      ...patchRows(parts, [{ at, cells: { fittedReading: read.reading } }]),
      ...addRows(readings, READINGS_SHEET, [log]),
    ],
    overwrites: [],
    notes: [],
  };
}
