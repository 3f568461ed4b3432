import type { Basket, BasketLine, BasketOffer, Plan } from "../plan.js";
import { billsOf, costOf, HAIR } from "./bills.js";
import { costOfUnits } from "./units.js";

/**
 * Every rule of the basket that a plan breaks, one sentence each; a sound plan gives an empty list.
 *
 * Looks at packs, minimums, multiples, stock, breaks, lines served in full and by fitting offers, lines that must be
 * alike, refused orders, excluded vendors, the cap on vendors, and at the cost itself.
 */
export function faultsOf(basket: Basket, plan: Plan): readonly string[] {
  return [...orderFaults(basket, plan), ...supplyFaults(basket, plan), ...vendorFaults(basket, plan)];
}

function orderFaults(basket: Basket, plan: Plan): string[] {
  const offers = new Map(basket.offers.map((offer) => [offer.id, offer]));
  const fitting = new Set(basket.lines.flatMap((line) => line.fits));
  return plan.orders.flatMap(({ offer: id, units }) => {
    const offer = offers.get(id);
    if (!offer) return [`${id} is no offer.`];
    return [
      ...(costOfUnits(offer, units) === null ? [`${units} units of ${id} can't be bought.`] : []),
      ...(fitting.has(id) ? [] : [`${id} fits no line.`]),
      ...overdrawn(offer, units, plan),
    ];
  });
}

function overdrawn(offer: BasketOffer, units: number, plan: Plan): string[] {
  const given = sum(plan.supplies.filter((supply) => supply.offer === offer.id));
  return given > units * offer.pack ? [`${offer.id} gives ${given} pieces out of ${units * offer.pack}.`] : [];
}

function supplyFaults(basket: Basket, plan: Plan): string[] {
  const bought = new Set(plan.orders.map((order) => order.offer));
  const stray = plan.supplies.filter((supply) => !bought.has(supply.offer));
  return [
    ...stray.map(({ offer }) => `${offer} gives pieces but is not bought.`),
    ...basket.lines.flatMap((line) => lineFaults(line, plan)),
  ];
}

function lineFaults(line: BasketLine, plan: Plan): string[] {
  const supplies = plan.supplies.filter((supply) => supply.line === line.id && supply.pieces > 0);
  const strangers = supplies.filter((supply) => !line.fits.includes(supply.offer));
  const pieces = sum(supplies);
  return [
    ...strangers.map(({ offer }) => `${offer} does not fit ${line.id}.`),
    ...(pieces < line.pieces ? [`${line.id} gets ${pieces} of ${line.pieces} pieces.`] : []),
    ...(line.single && supplies.length > 1 ? [`${line.id} must come from one offer.`] : []),
  ];
}

function vendorFaults(basket: Basket, plan: Plan): string[] {
  const bills = billsOf(basket, plan.orders);
  const { maxVendors, excluded } = basket.options;
  const cost = costOf(basket, plan.orders);
  return [
    ...bills.filter(({ vendor }) => excluded.includes(vendor)).map(({ vendor }) => `${vendor} is excluded.`),
    ...bills
      .filter(({ fee }) => fee === Number.POSITIVE_INFINITY)
      .map(({ vendor }) => `${vendor} refuses so small an order.`),
    ...(maxVendors !== null && bills.length > maxVendors
      ? [`${bills.length} vendors where ${maxVendors} may be.`]
      : []),
    ...(Math.abs(cost - plan.cost) > HAIR ? [`It costs ${cost}, not ${plan.cost}.`] : []),
    ...(plan.bound > plan.cost + HAIR ? [`The bound ${plan.bound} is above the cost.`] : []),
  ];
}

const sum = (supplies: readonly { readonly pieces: number }[]) => supplies.reduce((all, { pieces }) => all + pieces, 0);
