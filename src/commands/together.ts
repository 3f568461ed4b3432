import type { Change, Host, HostCell, SheetCells, Written } from "../hosts/host.js";
import { type Book, openBook } from "./book.js";
import type { Step } from "./step.js";

const EMPTY: HostCell = { value: null, formula: null };

/** A cell as it will stand once something was written to it; a formula's value is not known before the host works it out. */
function writtenCell(old: HostCell, written: Written): HostCell {
  if (written === null) return old;
  if (written === "") return EMPTY;
  if (typeof written === "object") return { value: null, formula: written.formula };
  return { value: written, formula: null };
}

function applied(rows: readonly (readonly HostCell[])[], change: Extract<Change, { kind: "cells" }>): HostCell[][] {
  const height = Math.max(rows.length, change.row + change.cells.length);
  const width = Math.max(rows[0]?.length ?? 0, change.column + (change.cells[0]?.length ?? 0));
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (_, column) => {
      const old = rows[row]?.[column] ?? EMPTY;
      const written = change.cells[row - change.row]?.[column - change.column];
      return written === undefined ? old : writtenCell(old, written);
    }),
  );
}

/** A host that shows what a workbook will be once some changes were made, and makes none of them. */
function ahead(host: Host, changes: readonly Change[]): Host {
  const named = changes.flatMap((change) => (change.kind === "sheet" ? [change.sheet] : []));
  const read = async (sheet: string): Promise<SheetCells | null> => {
    const there = await host.read(sheet);
    if (there === null && !named.includes(sheet)) return null;
    const own = changes.filter((change) => change.kind === "cells" && change.sheet === sheet);
    const rows = own.reduce(
      (cells, change) => applied(cells, change as Extract<Change, { kind: "cells" }>),
      (there?.rows ?? []) as HostCell[][],
    );
    return { sheet, rows };
  };
  return { ...host, read, sheets: async () => [...new Set([...(await host.sheets()), ...named])] };
}

/**
 * Several steps as one, each prepared on the workbook as the ones before will leave it: one undo takes all of them back.
 *
 * @param name What the whole is called.
 */
export async function together(host: Host, name: string, prepare: readonly ((book: Book) => Step)[]): Promise<Step> {
  const steps: Step[] = [];
  for (const next of prepare) {
    const book = await openBook(
      ahead(
        host,
        steps.flatMap(({ changes }) => changes),
      ),
    );
    steps.push(next(book));
  }
  return {
    name,
    changes: steps.flatMap(({ changes }) => changes),
    overwrites: steps.flatMap(({ overwrites }) => overwrites),
    notes: steps.flatMap(({ notes }) => notes),
  };
}
