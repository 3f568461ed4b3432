import type { Basket, Plan } from "../plan.js";
import { billsOf } from "./bills.js";
import { costOfUnits } from "./units.js";

/** What a plan gives one line: from which offers, how many pieces. */
export type Served = { readonly offer: string; readonly pieces: number };

/** One line that two plans serve differently; `more` is what its goods cost more, in the user's currency. */
export type Difference = {
  readonly line: string;
  readonly before: readonly Served[];
  readonly after: readonly Served[];
  readonly more: number;
};

/** What a vendor's bill is more beside the goods of the lines: shipping, fees, goods that only fill an order up. */
export type BillDifference = { readonly vendor: string; readonly more: number };

/** Two plans side by side; all that is more, over lines and bills, adds up to what the second costs more. */
export type Differences = {
  readonly more: number;
  readonly lines: readonly Difference[];
  readonly bills: readonly BillDifference[];
};

/** A difference of less than half a cent is none. */
const NOTHING = 0.005;

/**
 * What a second plan changes, line by line and in money: lines served or priced differently, then what vendors' shipping and fees do.
 *
 * An offer that serves several lines is paid by each for its share of the pieces; its spares are paid by them too.
 *
 * @param before The plan in force with its basket; `after` the other one with its own.
 */
export function differencesOf(
  before: { readonly basket: Basket; readonly plan: Plan },
  after: { readonly basket: Basket; readonly plan: Plan },
): Differences {
  const [was, is] = [chargesOf(before.basket, before.plan), chargesOf(after.basket, after.plan)];
  const lines = union(before.basket.lines, after.basket.lines).map((line) => ({
    line,
    before: servedBy(before.plan, line),
    after: servedBy(after.plan, line),
    more: (is.lines.get(line) ?? 0) - (was.lines.get(line) ?? 0),
  }));
  const bills = union(before.basket.vendors, after.basket.vendors).map((vendor) => ({
    vendor,
    more: (is.rest.get(vendor) ?? 0) - (was.rest.get(vendor) ?? 0),
  }));
  return {
    more: after.plan.cost - before.plan.cost,
    lines: lines.filter(
      (one) => Math.abs(one.more) >= NOTHING || JSON.stringify(one.before) !== JSON.stringify(one.after),
    ),
    bills: bills.filter(({ more }) => Math.abs(more) >= NOTHING),
  };
}

const union = (a: readonly { readonly id: string }[], b: readonly { readonly id: string }[]): readonly string[] => [
  ...new Set([...a, ...b].map(({ id }) => id)),
];

/** The goods of each line, and what each vendor's bill is beyond them; in the user's currency. */
function chargesOf(basket: Basket, plan: Plan) {
  const offers = new Map(basket.offers.map((offer) => [offer.id, offer]));
  const rates = new Map(basket.vendors.map(({ id, rate }) => [id, rate]));
  const lines = new Map<string, number>();
  const rest = new Map(billsOf(basket, plan.orders).map(({ vendor, total }) => [vendor, total]));
  for (const { offer: id, units } of plan.orders) {
    const offer = offers.get(id)!;
    const cost = (costOfUnits(offer, units) ?? 0) * rates.get(offer.vendor)!;
    const supplies = plan.supplies.filter((supply) => supply.offer === id);
    const pieces = supplies.reduce((sum, supply) => sum + supply.pieces, 0);
    if (pieces === 0) continue;
    rest.set(offer.vendor, rest.get(offer.vendor)! - cost);
    for (const supply of supplies)
      lines.set(supply.line, (lines.get(supply.line) ?? 0) + (cost * supply.pieces) / pieces);
  }
  return { lines, rest };
}

/** What a plan gives a line, by offer. */
export function servedBy(plan: Plan, line: string): readonly Served[] {
  return plan.supplies
    .filter((supply) => supply.line === line && supply.pieces > 0)
    .map(({ offer, pieces }) => ({ offer, pieces }))
    .sort((a, b) => (a.offer < b.offer ? -1 : 1));
}
