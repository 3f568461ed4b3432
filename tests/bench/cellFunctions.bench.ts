import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { catalogue } from "../../src/start/reference/catalogue.js";
import { type Example, readExample } from "../../src/start/reference/example.js";
import { loadFunctions } from "../functions/loadFunctions.js";
import type { Bench, Row } from "./measure.js";

const ROWS = 10_000;

/** Whether an example is one cell to one cell. */
function isScalar({ given, gives }: Example): boolean {
  const isOne = (cells: unknown) => cells === null || (cells as unknown[][]).flat().length === 1;
  return isOne(gives) && given.every(isOne);
}

/** A column of formulas, written into an embedded sheet of its own as one change. */
async function writeColumn(): Promise<void> {
  const { host } = embeddedWorkbook(new Model());
  const cells = Array.from({ length: ROWS }, (_, i) => [i + 1, { formula: `=LUG.NEAREST_STD(A${i + 1}, "E24")` }]);
  await host.write([{ kind: "cells", sheet: "Column", row: 0, column: 0, cells }], "Fill");
}

/** What each function of one cell costs over a column of 10,000 rows, and what the sheet adds to it. */
export const bench: Bench = {
  title: "a column of 10,000 rows (goals: 50 ms in the core, 0.5 s in the embedded sheet)",
  rows: async () => {
    await registerFromSources();
    const functions = await catalogue();
    const call = await loadFunctions(functions);
    const columns = functions
      .map(({ example }) => readExample(example))
      .filter(isScalar)
      .map(({ id, given: [first, ...rest] }): Row => {
        const column = Array.from({ length: ROWS }, () => (first as unknown[][])[0]);
        return { what: id, count: ROWS, run: () => call.get(id)!(column, ...rest) };
      });
    return [...columns, { what: "NEAREST_STD written into the embedded sheet", count: ROWS, run: writeColumn }];
  },
};
