import type { Basket, Plan } from "../plan.js";
import { allocate } from "./allocate.js";
import { costOf } from "./bills.js";
import type { BasketModel } from "./model.js";
import type { OfferColumns } from "./modelOffer.js";
import { leastUnits } from "./units.js";

/**
 * The plan that a solution of the model stands for; null where its figures can't be kept in whole pieces.
 *
 * @param values One for each column of the model.
 * @param bound What no plan can cost less than, in the user's currency.
 */
export function planOf(basket: Basket, model: BasketModel, values: ArrayLike<number>, bound: number): Plan | null {
  const units = new Map(model.offers.map((columns) => [columns, unitsOf(columns, values)] as const));
  const orders = [...units]
    .filter(([, count]) => count > 0)
    .map(([{ candidate }, count]) => ({ offer: candidate.offer.id, units: count }));
  const bought = new Map(
    [...units].map(
      ([
        {
          candidate: { offer },
        },
        count,
      ]) => [offer.id, count * offer.pack],
    ),
  );
  const sources = new Map<string, string>();
  for (const { candidate, flows } of model.offers)
    for (const { line, column } of flows)
      if (line.single && values[column]! > 0.5) sources.set(line.id, candidate.offer.id);
  const supplies = allocate(basket, bought, sources);
  return supplies && trimmed(basket, orders, supplies, bound);
}

function unitsOf({ candidate, tiers }: OfferColumns, values: ArrayLike<number>): number {
  return tiers.reduce((sum, { multiples }) => sum + Math.round(values[multiples]!), 0) * candidate.offer.multiple;
}

/** The same plan without units that nobody gets and that save nothing: own stock costs nothing and is taken as needed. */
export function trimmed(basket: Basket, orders: Plan["orders"], supplies: Plan["supplies"], bound: number): Plan {
  const offers = new Map(basket.offers.map((offer) => [offer.id, offer]));
  const given = new Map<string, number>();
  for (const { offer, pieces } of supplies) given.set(offer, (given.get(offer) ?? 0) + pieces);
  let kept = orders;
  let cost = costOf(basket, orders);
  for (const { offer: id, units } of orders) {
    const pieces = given.get(id) ?? 0;
    const least = pieces === 0 ? 0 : leastUnits(offers.get(id)!, pieces);
    if (least === null || least >= units) continue;
    const fewer = kept
      .map((one) => (one.offer === id ? { offer: id, units: least } : one))
      .filter(({ units }) => units > 0);
    const lower = costOf(basket, fewer);
    if (lower <= cost) [kept, cost] = [fewer, lower];
  }
  return { cost, bound, orders: kept, supplies };
}
