import type { Step } from "./step.js";

/** The library takes a run of cells as arguments of one call: with many more they overflow its stack. */
const LONGEST_RUN = 50_000;

/** Steps in which no run of cells is too long: a step of another kind, which changes nothing to be seen, ends each. */
export function inRuns(steps: readonly Step[]): readonly Step[] {
  return steps.flatMap((step, i) => ((i + 1) % LONGEST_RUN === 0 ? [step, rowAsHighAsItsText(step)] : [step]));
}

function rowAsHighAsItsText([, payload]: Step): Step {
  const { sheetId, row } = payload as { readonly sheetId: string; readonly row: number };
  return ["RESIZE_COLUMNS_ROWS", { sheetId, dimension: "ROW", elements: [row], size: null }];
}
