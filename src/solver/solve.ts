import highsModule from "highs";
import type { Milp } from "../core/index.js";

/** What the solver is told: where to start, how long it may take, and who wants to hear of better solutions. */
export type SolveOptions = {
  /** A known solution, one figure a column. */
  readonly start?: ArrayLike<number> | null;
  readonly seconds: number;
  /** Called with each better solution and the bound proven by then. */
  readonly onBetter?: (values: Float64Array, bound: number) => void;
  /** Called when more is proven: no solution can cost less than this. */
  readonly onBound?: (bound: number) => void;
  /** Where the solver's binary lies; on a page the bundler knows, in Node it is found. */
  readonly wasm?: string;
};

/** What came of it: the best solution found, and what no solution can cost less than. */
export type Solved = {
  readonly status: "optimal" | "infeasible" | "stopped";
  readonly values: Float64Array | null;
  readonly bound: number;
};

/** The package's types are written for CommonJS; what is imported is the loader itself. */
const loadHighs = highsModule as unknown as typeof highsModule.default;

/** A solution counts as the best when no other can be cheaper by more: a tenth of a cent. */
const CLOSE_ENOUGH = 0.001;

/** A bound is told again when it has risen by so much of itself. */
const TOLD_STEP = 1e-4;

/**
 * Solves a mixed-integer linear model with HiGHS, in Node and in a worker alike; the only place that knows the solver.
 *
 * The thread is blocked while it runs: on a page call it in a worker, and end the worker to cancel.
 */
export async function solve(milp: Milp, options: SolveOptions): Promise<Solved> {
  const { wasm } = options;
  const highs = await loadHighs(wasm ? { locateFile: () => wasm } : {});
  return highs.withModel(dataOf(milp), (model) => {
    model.options.set({ output_flag: false, time_limit: options.seconds, mip_rel_gap: 0, mip_abs_gap: CLOSE_ENOUGH });
    if (options.start) model.setSolution({ colValue: Float64Array.from(options.start) });
    let last: Float64Array | null = null;
    let proven = Number.NEGATIVE_INFINITY;
    model.run({
      [highs.constants.callbackType.mipInterrupt]({ data }) {
        const bound = data.mip_dual_bound ?? proven;
        if (!(bound > proven + TOLD_STEP * Math.abs(bound))) return;
        proven = bound;
        options.onBound?.(bound);
      },
      [highs.constants.callbackType.mipImprovingSolution]({ data }) {
        last = data.mip_solution ?? last;
        if (last) options.onBetter?.(last, data.mip_dual_bound ?? Number.NEGATIVE_INFINITY);
      },
    });
    const status = statusOf(model.getModelStatus(), highs.constants.modelStatus);
    const values = status === "optimal" ? model.getSolution().colValue : last;
    return { status, values, bound: Number(model.info.get("mip_dual_bound")) };
  });
}

function statusOf(found: number, names: { readonly optimal: number; readonly infeasible: number }): Solved["status"] {
  if (found === names.optimal) return "optimal";
  return found === names.infeasible ? "infeasible" : "stopped";
}

/** The model in the solver's form: rows one after the other, factors of a column that stands twice in a row added up. */
function dataOf({ columns, rows }: Milp) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const row of rows) {
    const factors = new Map<number, number>();
    for (const [column, factor] of row.terms) factors.set(column, (factors.get(column) ?? 0) + factor);
    for (const [column, factor] of factors) {
      indices.push(column);
      values.push(factor);
    }
    starts.push(indices.length);
  }
  const [numCols, numRows] = [columns.length, rows.length];
  return {
    numCols,
    numRows,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(({ lower }) => lower),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    integrality: columns.map(({ integer }) => (integer ? 1 : 0) as 0 | 1),
    matrix: { format: "csr" as const, numCols, numRows, starts, indices, values },
  };
}
