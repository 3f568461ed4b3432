import type { Host } from "../hosts/host.js";
import type { Step } from "./step.js";

/** Puts a formula into the selected cell; what stands there is asked about. */
export async function insertFormulaStep(host: Host, formula: string): Promise<Step> {
  const place = await host.selection();
  const there = (await host.read(place.sheet))?.rows[place.row]?.[place.column];
  const was = there?.formula ?? there?.value ?? null;
  const overwrites =
    was === null || was === ""
      ? []
      : [{ place, row: `row ${place.row + 1}`, head: `column ${place.column + 1}`, was: String(was), will: formula }];
  const cells = [[{ formula }]];
  return {
    name: "Put the formula into the cell",
    changes: [{ kind: "cells", sheet: place.sheet, row: place.row, column: place.column, cells }],
    overwrites,
    notes: [],
  };
}
