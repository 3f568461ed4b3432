import type { Basket, BasketLine, Plan } from "../plan.js";
import { withoutVendor } from "./alternatives.js";
import { type Bill, billsOf, reaches } from "./bills.js";
import { firstPlans } from "./firstPlan.js";
import { moneyText } from "./moneyText.js";
import { type Candidate, type Scope, scopeOf } from "./scope.js";

/** Why a vendor is in a plan, in a sentence. */
export type VendorReason = { readonly vendor: string; readonly because: string };

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
  return more < 0.005
    ? "A plan without it costs as much."
    : `Without it the order is about ${moneyText(more, basket.currency)} dearer.`;
}

/** Up to four names, then how many more. @example listed(["R1", "R2"]) // "R1, R2" */
function listed(names: readonly string[]): string {
  const shown = names.slice(0, 4).join(", ");
  return names.length > 4 ? `${shown} and ${names.length - 4} more` : shown;
}

/**
 * Why an offer of a plan is bought where it is, in one sentence: it is the cheapest that fits, or what stands against the cheaper one.
 *
 * Judged on whole lines, packs and breaks included, with the line where another vendor's goods would save most.
 *
 * @param offer The id of an offer that the plan buys.
 * @param scope Of the basket; given where many offers are asked about.
 * @example whyHere(basket, plan, "A-2") // "B-2 is 1.00 cheaper, but a parcel from B costs 4.00"
 */
export function whyHere(basket: Basket, plan: Plan, offer: string, scope: Scope = scopeOf(basket)): string {
  const served = basket.lines.filter(({ id }) => plan.supplies.some((one) => one.offer === offer && one.line === id));
  if (served.length === 0) return "fills the order up to what its vendor asks for";
  const rivals = served.flatMap(({ id }) => scope.byLine.get(id)!.filter((one) => one.offer.id !== offer));
  if (rivals.length === 0) return "the only offer that fits";
  const temptations = served.map((line) => temptationOf(line, scope, plan));
  const most = temptations.reduce((a, b) => (b.less > a.less ? b : a));
  if (most.less < 0.005) return "the cheapest that fits";
  const bills = new Map(billsOf(basket, plan.orders).map((bill) => [bill.vendor, bill]));
  return `${most.cheapest.offer.id} is ${moneyText(most.less, basket.currency)} cheaper, ${but(basket, most, bills)}`;
}

/**
 * Where a plan does not take the cheapest goods: the offers bought for lines that another's goods would serve for less, each
 * with what stands against it.
 */
export function dearerChoices(
  basket: Basket,
  plan: Plan,
): readonly { readonly offer: string; readonly because: string }[] {
  const scope = scopeOf(basket);
  return plan.orders.flatMap(({ offer }) => {
    const because = whyHere(basket, plan, offer, scope);
    return because.includes(CHEAPER) ? [{ offer, because }] : [];
  });
}

const CHEAPER = " cheaper, but ";

/** The offer whose goods alone would be cheapest for a line, by how much, and the offers that serve it instead. */
type Temptation = { readonly cheapest: Candidate; readonly less: number; readonly chosen: readonly Candidate[] };

function temptationOf({ id, pieces }: BasketLine, scope: Scope, plan: Plan): Temptation {
  const offers = scope.byLine.get(id)!;
  const costOf = ({ curve }: Candidate) => curve[pieces] ?? Number.POSITIVE_INFINITY;
  const cheapest = offers.reduce((a, b) => (costOf(b) < costOf(a) ? b : a));
  const supplies = plan.supplies.filter(({ line }) => line === id);
  const chosen = supplies.map((supply) => offers.find((one) => one.offer.id === supply.offer)!);
  const paid = supplies.reduce((sum, supply, i) => sum + chosen[i]!.curve[supply.pieces]!, 0);
  return { cheapest, less: chosen.includes(cheapest) ? 0 : paid - costOf(cheapest), chosen };
}

/** The other side of a cheaper offer: its parcel, a threshold that the chosen one helps to reach, or packs that others share. */
function but(basket: Basket, { cheapest: { vendor }, chosen }: Temptation, bills: ReadonlyMap<string, Bill>): string {
  if (!bills.has(vendor.id) && vendor.shipping > 0)
    return `but a parcel from ${vendor.id} costs ${moneyText(vendor.shipping * vendor.rate, basket.currency)}`;
  for (const { vendor: here } of chosen) {
    const goods = bills.get(here.id)?.goods ?? 0;
    if (here.freeFrom !== null && reaches(goods, here.freeFrom))
      return `but this keeps ${here.id} above ${moneyText(here.freeFrom, here.currency)}, from where shipping is free`;
    if (here.minimumOrder !== null && reaches(goods, here.minimumOrder))
      return `but this keeps ${here.id} above its minimum of ${moneyText(here.minimumOrder, here.currency)}`;
  }
  return chosen.some(({ lines }) => lines.length > 1)
    ? "but other lines share what is bought here"
    : "but the order as a whole is cheaper so";
}
