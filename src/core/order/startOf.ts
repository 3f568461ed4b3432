import type { Basket, Plan } from "../plan.js";
import { type Bill, billsOf } from "./bills.js";
import type { BasketModel } from "./model.js";
import type { OfferColumns } from "./modelOffer.js";
import type { VendorColumns } from "./modelVendor.js";

/** A plan as a solution of the model, one figure a column: the solver starts from it. */
export function startOf(basket: Basket, model: BasketModel, plan: Plan): Float64Array {
  const values = new Float64Array(model.milp.columns.length);
  const units = new Map(plan.orders.map((order) => [order.offer, order.units]));
  const bills = new Map(billsOf(basket, plan.orders).map((bill) => [bill.vendor, bill]));
  for (const columns of model.vendors) setVendor(values, columns, bills.get(columns.vendor.id));
  for (const columns of model.offers) setOffer(values, columns, units.get(columns.candidate.offer.id) ?? 0);
  const shared = model.offers.filter(({ candidate }) => candidate.lines.length > 1);
  const flows = new Map(
    shared.flatMap(({ candidate, flows }) => flows.map((flow) => [`${candidate.offer.id}\n${flow.line.id}`, flow])),
  );
  for (const { offer, line, pieces } of plan.supplies) {
    const flow = flows.get(`${offer}\n${line}`);
    if (flow) values[flow.column] = pieces / flow.pieces;
  }
  return values;
}

function setVendor(values: Float64Array, { used, free, fee }: VendorColumns, bill: Bill | undefined): void {
  if (!bill) return;
  values[used] = 1;
  if (free !== null) values[free] = bill.shipping === 0 ? 1 : 0;
  if (fee !== null) values[fee] = bill.fee > 0 ? 1 : 0;
}

function setOffer(values: Float64Array, { candidate, tiers }: OfferColumns, units: number): void {
  const found = tiers.find(({ tier }) => tier.least <= units && units <= tier.most);
  if (!found) return;
  values[found.multiples] = units / candidate.offer.multiple;
  values[found.chosen] = 1;
}
