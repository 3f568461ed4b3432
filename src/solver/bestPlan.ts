import {
  type Basket,
  firstPlans,
  type Infeasible,
  leaningPlans,
  modelOf,
  type Plan,
  planOf,
  shortageModelOf,
  shortagesOf,
  shortLines,
  startOf,
} from "../core/index.js";
import { type SolveOptions, solve } from "./solve.js";

/** How long the search may take in all, who wants to hear of better plans, and where the solver's binary lies. */
export type PlanOptions = Pick<SolveOptions, "seconds" | "wasm"> & { readonly onBetter?: (plan: Plan) => void };

/** Two costs closer than this are one: half a cent. */
const SAME_COST = 0.005;

/** The search without the solver ends when this share of the time is gone. */
const SHARE_OF_LEANING = 0.5;

const isProven = (plan: Plan): boolean => plan.cost - plan.bound < SAME_COST;

/**
 * The cheapest plan for a basket, proven so far as the time allows, or why there is none.
 *
 * A first plan comes at once; the solver starts from it, and each better plan, and each better proof, is told as it is found. Blocks its thread:
 * on a page ask `planInWorker`.
 *
 * @example await bestPlan(basket, { seconds: 25 })
 */
export async function bestPlan(basket: Basket, options: PlanOptions): Promise<Plan | Infeasible> {
  const end = performance.now() + options.seconds * 1000;
  const left = () => ({ wasm: options.wasm, seconds: Math.max(1, (end - performance.now()) / 1000) });
  const short = shortLines(basket);
  if (short.length > 0) return { infeasible: true, because: short };
  const first = firstPlan(basket, options, end);
  if (first && isProven(first)) return first;
  const best = await improve(basket, first, { ...left(), onBetter: options.onBetter });
  return best ?? { infeasible: true, because: await reasons(basket, left()) };
}

/** The best plan without the solver: by sets of vendors, then drawn to thresholds near by, within the share of the time it has. */
function firstPlan(basket: Basket, { onBetter, seconds }: PlanOptions, end: number): Plan | null {
  let best: Plan | null = null;
  const take = (plan: Plan) => {
    if (best && plan.cost >= best.cost) return;
    best = plan;
    onBetter?.(plan);
  };
  for (const plan of firstPlans(basket)) take(plan);
  const isLate = () => performance.now() > end - seconds * (1 - SHARE_OF_LEANING) * 1000;
  if (!best || isProven(best)) return best;
  for (const plan of leaningPlans(basket, best)) {
    take(plan);
    if (isLate()) break;
  }
  return best;
}

/** The best plan the solver finds from a first one on, with all that is proven of its bound. */
async function improve(basket: Basket, first: Plan | null, options: PlanOptions): Promise<Plan | null> {
  const model = modelOf(basket);
  let best = first;
  const better = (plan: Plan | null) => {
    if (!plan || (best && plan.cost > best.cost)) return;
    best = withBound(plan, best?.bound ?? 0);
    options.onBetter?.(best);
  };
  const { status, values, bound } = await solve(model.milp, {
    ...options,
    start: first && startOf(basket, model, first),
    onBetter: (found, proven) => better(planOf(basket, model, found, proven)),
    onBound: (proven) => better(best && { ...best, bound: proven }),
  });
  if (values) better(planOf(basket, model, values, bound));
  return best && withBound(best, status === "optimal" ? best.cost : bound);
}

/** A plan with the higher of two bounds, which is never above its cost. */
const withBound = (plan: Plan, bound: number): Plan => ({
  ...plan,
  bound: Math.min(Math.max(plan.bound, bound), plan.cost),
});

/** Why no plan was found: the lines that miss pieces when as many as possible are served. */
async function reasons(basket: Basket, options: Pick<SolveOptions, "seconds" | "wasm">): Promise<readonly string[]> {
  const shortage = shortageModelOf(basket);
  const { values } = await solve(shortage.milp, options);
  const found = values ? shortagesOf(basket, shortage, values) : [];
  return found.length > 0 ? found : ["No plan was found in the time there was."];
}
