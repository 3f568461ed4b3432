import type { Basket, BasketLine, Plan } from "../plan.js";
import { withoutVendor } from "./alternatives.js";
import { type Bill, billsOf, reaches } from "./bills.js";
import { firstPlans } from "./firstPlan.js";
import { type Candidate, type Scope, scopeOf } from "./scope.js";

/** Why a vendor is in a plan, in a sentence. */
export type VendorReason = { readonly vendor: string; readonly because: string };

/** Money in a sentence. @example money(4) // "4.00" */
const money = (amount: number) => amount.toFixed(2);

/**
 * Why each vendor is in a plan: what only it has, or how much dearer a plan without it is.
 *
 * The plan without it is the quick one, so the best one may be a little less dearer: the figure is an "about".
 */
export function vendorReasons(basket: Basket, plan: Plan): readonly VendorReason[] {
  const scope = scopeOf(basket);
  return billsOf(basket, plan.orders).map((bill) => ({
    vendor: bill.vendor,
    because: whyVendor(basket, scope, plan, bill),
  }));
}

function whyVendor(basket: Basket, scope: Scope, plan: Plan, { vendor }: Bill): string {
  const only = basket.lines.filter(({ id }) => scope.byLine.get(id)!.every((one) => one.vendor.id === vendor));
  if (only.length > 0) return `Only ${vendor} has ${listed(only.map(({ id }) => id))}.`;
  const without = [...firstPlans(withoutVendor(basket, vendor))].at(-1);
  if (!without) return `Without ${vendor} not every line can be served.`;
  const more = without.cost - plan.cost;
  return more < 0.005 ? "A plan without it costs as much." : `Without it the order is about ${money(more)} dearer.`;
}

/** Up to four names, then how many more. @example listed(["R1", "R2"]) // "R1, R2" */
function listed(names: readonly string[]): string {
  const shown = names.slice(0, 4).join(", ");
  return names.length > 4 ? `${shown} and ${names.length - 4} more` : shown;
}

/** Why a line is not bought where its goods are cheapest; null where it is. */
export type LineReason = { readonly line: string; readonly because: string | null };

/**
 * For each line, why the vendor whose goods are cheapest for it was not chosen.
 *
 * @example lineReasons(basket, plan)[0] // { line: "R7", because: "B-2 is 0.30 cheaper, but a parcel from B costs 4.00." }
 */
export function lineReasons(basket: Basket, plan: Plan): readonly LineReason[] {
  const scope = scopeOf(basket);
  const bills = new Map(billsOf(basket, plan.orders).map((bill) => [bill.vendor, bill]));
  return basket.lines.map((line) => ({ line: line.id, because: whyNotCheapest(line, scope, plan, bills) }));
}

function whyNotCheapest(line: BasketLine, scope: Scope, plan: Plan, bills: ReadonlyMap<string, Bill>): string | null {
  const offers = scope.byLine.get(line.id)!;
  const costOf = ({ curve }: Candidate) => curve[line.pieces] ?? Number.POSITIVE_INFINITY;
  const cheapest = offers.reduce((a, b) => (costOf(b) < costOf(a) ? b : a));
  const supplies = plan.supplies.filter((supply) => supply.line === line.id);
  if (supplies.some((supply) => supply.offer === cheapest.offer.id)) return null;
  const sources = supplies.flatMap(({ offer, pieces }) =>
    offers.filter((one) => one.offer.id === offer).map((one) => ({ one, pieces })),
  );
  const paid = sources.reduce((sum, { one, pieces }) => sum + one.curve[pieces]!, 0);
  const less = paid - costOf(cheapest);
  if (less < 0.005) return null;
  return `${cheapest.offer.id} is ${money(less)} cheaper, ${but(
    cheapest,
    sources.map(({ one }) => one),
    bills,
  )}`;
}

/** The other side of a cheaper offer: its parcel, a threshold that the chosen one helps to reach, or packs that others share. */
function but({ vendor }: Candidate, chosen: readonly Candidate[], bills: ReadonlyMap<string, Bill>): string {
  if (!bills.has(vendor.id) && vendor.shipping > 0)
    return `but a parcel from ${vendor.id} costs ${money(vendor.shipping * vendor.rate)}.`;
  for (const { vendor: here } of chosen) {
    const bill = bills.get(here.id);
    if (bill && here.freeFrom !== null && reaches(bill.goods, here.freeFrom))
      return `but this keeps ${here.id} above ${money(here.freeFrom)}, from where shipping is free.`;
    if (bill && here.minimumOrder !== null && reaches(bill.goods, here.minimumOrder))
      return `but this keeps ${here.id} above its minimum of ${money(here.minimumOrder)}.`;
  }
  return chosen.some(({ lines }) => lines.length > 1)
    ? "but other lines share what is bought here."
    : "but the order as a whole is cheaper so.";
}
