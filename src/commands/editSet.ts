import type { PROJECTS_SHEET } from "../core/index.js";
import type { Book } from "./book.js";
import { nothingToDo, type Step } from "./step.js";
import { patchRows, type RowCells } from "./writeSheet.js";

/** Changes cells of a set's row in Projects; cells that hold it already are left alone. */
export function editSetStep(book: Book, short: string | null, cells: RowCells<typeof PROJECTS_SHEET>): Step {
  const { projects } = book;
  const row = projects?.rows.find((each) => each.values.short === short);
  if (!projects || !row) return nothingToDo("No such set");
  const changed = Object.entries(cells).filter(
    ([key, cell]) => String(row.values[key as keyof typeof row.values] ?? "") !== String(cell ?? ""),
  );
  if (changed.length === 0) return nothingToDo("Nothing changed");
  const patch = { at: row.at, cells: Object.fromEntries(changed) as RowCells<typeof PROJECTS_SHEET> };
  return { name: `Change the card of ${short}`, changes: patchRows(projects, [patch]), overwrites: [], notes: [] };
}
