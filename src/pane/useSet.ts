import { projectOf, valuesOf } from "../commands/book.js";
import type { ViewRow } from "../commands/openSheet.js";
import type { PARTS_SHEET, ProjectsRow } from "../core/index.js";
import type { Bench } from "./bench.js";

/** The row of Parts that the user stands on, or null. */
export function rowInHand({ book, place }: Pick<Bench, "book" | "place">): ViewRow<typeof PARTS_SHEET> | null {
  if (!book.parts || place.sheet !== book.parts.name) return null;
  return book.parts.rows.find((row) => row.at === place.row) ?? null;
}

/** The set in the hand: that of the selected row of Parts or of Projects, else the first open one. */
export function setInHand(bench: Pick<Bench, "book" | "place">): ProjectsRow | null {
  const { book, place } = bench;
  const ofPart = rowInHand(bench)?.values.project ?? null;
  if (ofPart !== null) return projectOf(book, ofPart);
  if (book.projects && place.sheet === book.projects.name) {
    const here = book.projects.rows.find((row) => row.at === place.row);
    if (here) return here.values;
  }
  const sets = valuesOf(book.projects);
  return sets.find((set) => set.state !== "closed") ?? sets[0] ?? null;
}
