import {
  type Alternative,
  type Basket,
  type Bill,
  billsOf,
  type Differences,
  differencesOf,
  type Infeasible,
  moneyText,
  type Plan,
  type PlanReasons,
  planReasons,
  type Served,
  type VendorReason,
} from "../core/index.js";
import { isPlan } from "./order.js";

/** Finds the cheapest plan of a basket, telling of each better one as it is found; stopped, it keeps the best so far. */
export type PlanService = (
  basket: Basket,
  onBetter: (plan: Plan) => void,
  signal?: AbortSignal,
) => Promise<Plan | Infeasible>;

/** Says why a plan is as it is. */
export type ReasonService = (basket: Basket, plan: Plan) => Promise<PlanReasons>;

/** A plan with what it rests on: its basket, each vendor's bill, and what it saves, in sentences. */
export type Planned = {
  readonly basket: Basket;
  readonly plan: Plan | Infeasible;
  readonly bills: readonly Bill[];
  readonly savings: readonly string[];
  readonly reasons: readonly VendorReason[];
  /** Offers bought though other goods are cheaper, with what stands against those. */
  readonly dearer: readonly { readonly offer: string; readonly because: string }[];
};

/**
 * The cheapest plan for a basket, with its bills and what it saves against buying each line where it is cheapest.
 *
 * @param onBetter Hears of each better plan on the way, without its reasons.
 * @param reasons Where the reasons are worked out: here, or on a page in another thread.
 */
export async function planBasket(
  basket: Basket,
  plan: PlanService,
  onBetter: (planned: Planned) => void = () => {},
  signal?: AbortSignal,
  reasons: ReasonService = async (...of) => planReasons(...of),
): Promise<Planned> {
  const found = await plan(basket, (better) => onBetter(plannedOf(basket, better)), signal);
  const planned = plannedOf(basket, found);
  if (!isPlan(found)) return planned;
  const { vendors, dearer, alternatives } = await reasons(basket, found);
  return { ...planned, reasons: vendors, dearer, savings: savingsOf(basket, found, alternatives) };
}

function plannedOf(basket: Basket, plan: Plan | Infeasible): Planned {
  const bills = isPlan(plan) ? billsOf(basket, plan.orders) : [];
  return { basket, plan, bills, savings: [], reasons: [], dearer: [] };
}

function savingsOf(basket: Basket, plan: Plan, alternatives: readonly Alternative[]): readonly string[] {
  return alternatives.flatMap(({ what, cost }) => {
    if (cost === null || cost <= plan.cost + 0.005) return [];
    return [
      `${what[0]!.toUpperCase()}${what.slice(1)}: ${moneyText(cost, basket.currency)}, ${moneyText(cost - plan.cost, basket.currency)} more.`,
    ];
  });
}

/** What a what-if changes, in money and line by line; null where either is no plan. */
export function changesSince(before: Planned, after: Planned): Differences | null {
  if (!isPlan(before.plan) || !isPlan(after.plan)) return null;
  return differencesOf({ basket: before.basket, plan: before.plan }, { basket: after.basket, plan: after.plan });
}

/** Pieces of offers in a sentence. @example servedText([{ offer: "Near N1", pieces: 3 }]) // "3 of Near N1" */
export const servedText = (served: readonly Served[]): string =>
  served.map(({ offer, pieces }) => `${pieces} of ${offer}`).join(" and ") || "nothing";
