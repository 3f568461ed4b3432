import type { Basket, BasketOffer, Plan } from "../plan.js";
import { allocate } from "./allocate.js";
import { costOf } from "./bills.js";
import type { BasketModel } from "./model.js";
import type { OfferColumns } from "./modelOffer.js";
import { cheapestUnits, leastUnits, ROUNDING } from "./units.js";

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

/**
 * The same plan without units that nobody gets and that save nothing, and with more where a break gives them for nothing.
 *
 * Own stock costs nothing whatever is taken: of it no more is taken than needed.
 */
export function trimmed(basket: Basket, orders: Plan["orders"], supplies: Plan["supplies"], bound: number): Plan {
  const offers = new Map(basket.offers.map((offer) => [offer.id, offer]));
  const given = new Map<string, number>();
  for (const { offer, pieces } of supplies) given.set(offer, (given.get(offer) ?? 0) + pieces);
  let kept = orders;
  let cost = costOf(basket, orders);
  for (const { offer: id, units } of orders) {
    const fitting = fittingUnits(offers.get(id)!, given.get(id) ?? 0);
    if (fitting === null || fitting === units) continue;
    const changed = kept.map((order) => (order.offer === id ? { offer: id, units: fitting } : order));
    const next = changed.filter((order) => order.units > 0);
    const total = costOf(basket, next);
    if (total <= cost + ROUNDING) [kept, cost] = [next, total];
  }
  return { cost, bound, orders: kept, supplies };
}

/** The units to buy for so many pieces of an offer taken by itself. */
function fittingUnits(offer: BasketOffer, pieces: number): number | null {
  if (pieces === 0) return 0;
  const purchase = cheapestUnits(offer, pieces);
  return purchase?.cost === 0 ? leastUnits(offer, pieces) : (purchase?.units ?? null);
}
