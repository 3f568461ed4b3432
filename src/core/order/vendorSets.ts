import type { Basket } from "../plan.js";
import { billOf } from "./bills.js";
import { type LineTable, leastShipping, type VendorSet } from "./lineTable.js";
import type { Scope } from "./scope.js";

/** A set of vendors with what a plan from it is likely to cost, and what it costs at the very least. */
export type Ranked = { readonly set: VendorSet; readonly likely: number; readonly least: number };

/** Up to so many vendors every set is looked at; beyond, sets are found by leaving vendors out one by one. */
const ALL_SETS_UP_TO = 12;

/**
 * Sets of vendors, the most promising first, and what no plan can cost less than (0 where not all sets were looked at).
 *
 * Lines are served each at its cheapest from the set; thresholds are judged on the goods that makes.
 */
export function rankedSets(basket: Basket, scope: Scope, tables: readonly LineTable[]) {
  const count = scope.vendors.length;
  const most = Math.min(basket.options.maxVendors ?? count, count);
  const judge = (set: VendorSet) => judged(set, scope, tables);
  const complete = count <= ALL_SETS_UP_TO;
  const sets = complete ? allSets(count, most).map(judge) : descent(count, most, judge);
  const possible = sets.filter(({ likely }) => likely < Number.POSITIVE_INFINITY);
  const bound = complete ? Math.min(...sets.map(({ least }) => least)) : 0;
  return { ranked: possible.sort((a, b) => a.likely - b.likely), bound };
}

function allSets(count: number, most: number): VendorSet[] {
  const sets = Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (_, i) => ((bits >> i) & 1) === 1),
  );
  return sets.filter((set) => sizeOf(set) <= most);
}

const sizeOf = (set: VendorSet) => set.filter(Boolean).length;

/** From all vendors down, each time leaving out the one whose loss costs least. */
function descent(count: number, most: number, judge: (set: VendorSet) => Ranked): Ranked[] {
  const seen: Ranked[] = [judge(new Array<boolean>(count).fill(true))];
  for (let last = seen[0]!; sizeOf(last.set) > 1; ) {
    const fewer = last.set.flatMap((used, i) => (used ? [judge(last.set.map((flag, j) => flag && j !== i))] : []));
    last = fewer.reduce((a, b) => (b.likely < a.likely ? b : a));
    seen.push(last);
  }
  return seen.filter(({ set }) => sizeOf(set) <= most);
}

function judged(set: VendorSet, scope: Scope, tables: readonly LineTable[]): Ranked {
  const spent = new Map(scope.vendors.map(({ id }) => [id, 0]));
  let likely = 0;
  let least = 0;
  for (const table of tables) {
    least += table.least(set);
    const choice = table.best(set);
    if (!choice) likely = Number.POSITIVE_INFINITY;
    for (const { candidate, cost } of choice?.shares ?? [])
      spent.set(candidate.vendor.id, spent.get(candidate.vendor.id)! + cost);
  }
  scope.vendors.forEach((vendor, i) => {
    const goods = spent.get(vendor.id)! / vendor.rate;
    if (set[i]) least += leastShipping(vendor);
    if (goods > 0) likely += likelyTotal(vendor, goods);
  });
  return { set, likely, least };
}

/** A vendor's bill, where a refused order is taken to be filled up with goods. */
function likelyTotal(vendor: Scope["vendors"][number], goods: number): number {
  const { total } = billOf(vendor, goods);
  return total < Number.POSITIVE_INFINITY ? total : (vendor.minimumOrder! + vendor.shipping) * vendor.rate;
}
