import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { Written } from "../../src/hosts/host.js";
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

/** Writes one column of formulas after the other beside a column of values of an embedded sheet, each as one change. */
async function fillingColumn(...formulas: readonly ((row: number) => string)[]): Promise<() => unknown> {
  const { host } = embeddedWorkbook(new Model());
  const rows = Array.from({ length: ROWS }, (_, i) => i + 1);
  const write = (column: number, cells: readonly (readonly Written[])[]) =>
    host.write([{ kind: "cells", sheet: "Column", row: 0, column, cells }], "Fill");
  await write(
    0,
    rows.map((row) => [row]),
  );
  const columns = formulas.map((of) => rows.map((row) => [{ formula: of(row) }]));
  let at = 0;
  return () => write(1, columns[at++ % columns.length]!);
}

/** What each function of one cell costs over a column of 10,000 rows, and what the sheet adds to it. */
export const bench: Bench = {
  title: "a column of 10,000 rows: each function of one value in the core, then written into the embedded sheet",
  rows: async () => {
    await registerFromSources();
    const functions = await catalogue();
    const call = await loadFunctions(functions);
    const columns = functions
      .map(({ example }) => readExample(example))
      .filter(isScalar)
      .map(({ id, given: [first, ...rest] }): Row => {
        const column = Array.from({ length: ROWS }, () => (first as unknown[][])[0]);
        return { what: id, count: ROWS, run: () => call.get(id)!(column, ...rest), goal: { median: 0.05 } };
      });
    const own = "ROUND, the sheet's own, in the sheet";
    const round = await fillingColumn(
      (row) => `=ROUND(A${row}, 2)`,
      (row) => `=ROUND(A${row}, 3)`,
    );
    const nearest = await fillingColumn(
      (row) => `=LUG.NEAREST_STD(A${row}, "E24")`,
      (row) => `=LUG.NEAREST_STD(A${row}, "E12")`,
    );
    return [
      ...columns,
      { what: own, count: ROWS, run: round },
      { what: "NEAREST_STD in the sheet", count: ROWS, run: nearest, comparedWith: own, goal: { median: 0.5 } },
    ];
  },
};
