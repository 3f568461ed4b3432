import { type Basket, type Bill, billsOf, cheapestPerLine, type Infeasible, type Plan } from "../core/index.js";
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
  return plannedOf(basket, found);
}

function plannedOf(basket: Basket, plan: Plan | Infeasible): Planned {
  if (!isPlan(plan)) return { basket, plan, bills: [], savings: [] };
  return { basket, plan, bills: billsOf(basket, plan.orders), savings: savingsOf(basket, plan) };
}

function savingsOf(basket: Basket, plan: Plan): readonly string[] {
  const perLine = cheapestPerLine(basket);
  if (perLine === null || perLine <= plan.cost + 0.005) return [];
  return [`It saves ${(perLine - plan.cost).toFixed(2)} against buying each line where it is cheapest.`];
}
