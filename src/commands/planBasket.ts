import {
  alternativesTo,
  type Basket,
  type Bill,
  billsOf,
  differencesOf,
  type Infeasible,
  type Plan,
  type Served,
  type VendorReason,
  vendorReasons,
} from "../core/index.js";
import { isPlan } from "./order.js";

/** Finds the cheapest plan of a basket, telling of each better one as it is found; stopped, it keeps the best so far. */
export type PlanService = (
  basket: Basket,
  onBetter: (plan: Plan) => void,
  signal?: AbortSignal,
) => Promise<Plan | Infeasible>;

/** A plan with what it rests on: its basket, each vendor's bill, and what it saves, in sentences. */
export type Planned = {
  readonly basket: Basket;
  readonly plan: Plan | Infeasible;
  readonly bills: readonly Bill[];
  readonly savings: readonly string[];
  readonly reasons: readonly VendorReason[];
};

/**
 * The cheapest plan for a basket, with its bills and what it saves against buying each line where it is cheapest.
 *
 * @param onBetter Hears of each better plan on the way.
 */
export async function planBasket(
  basket: Basket,
  plan: PlanService,
  onBetter: (planned: Planned) => void = () => {},
  signal?: AbortSignal,
): Promise<Planned> {
  const found = await plan(basket, (better) => onBetter(plannedOf(basket, better)), signal);
  const planned = plannedOf(basket, found);
  return isPlan(found) ? { ...planned, reasons: vendorReasons(basket, found) } : planned;
}

function plannedOf(basket: Basket, plan: Plan | Infeasible): Planned {
  if (!isPlan(plan)) return { basket, plan, bills: [], savings: [], reasons: [] };
  return { basket, plan, bills: billsOf(basket, plan.orders), savings: savingsOf(basket, plan), reasons: [] };
}

function savingsOf(basket: Basket, plan: Plan): readonly string[] {
  return alternativesTo(basket).flatMap(({ what, cost }) => {
    if (cost === null || cost <= plan.cost + 0.005) return [];
    return [`${what[0]!.toUpperCase()}${what.slice(1)}: ${cost.toFixed(2)}, ${(cost - plan.cost).toFixed(2)} more.`];
  });
}

/** What a what-if changes: the cost, then line by line what was and what would be; empty where either is no plan. */
export function changesSince(before: Planned, after: Planned): readonly string[] {
  if (!isPlan(before.plan) || !isPlan(after.plan)) return [];
  const more = after.plan.cost - before.plan.cost;
  const cost = `${Math.abs(more).toFixed(2)} ${more < 0 ? "less" : "more"} than the plan before.`;
  const named = (served: readonly Served[]) =>
    served.map(({ offer, pieces }) => `${pieces} of ${offer}`).join(" and ") || "nothing";
  const lines = differencesOf(after.basket, before.plan, after.plan);
  return [cost, ...lines.map((one) => `${one.line}: ${named(one.after)} instead of ${named(one.before)}.`)];
}
