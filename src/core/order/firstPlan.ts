import type { Basket, Plan } from "../plan.js";
import { costOf } from "./bills.js";
import { cheapestMix } from "./lineCost.js";
import { lineTables, type VendorSet } from "./lineTable.js";
import { type Candidate, type Scope, scopeOf } from "./scope.js";
import { toppedUp } from "./topUp.js";
import { cheapestUnits } from "./units.js";
import { rankedSets } from "./vendorSets.js";

/** So many of the most promising sets of vendors are worked out in full. */
const SETS_TRIED = 12;

/**
 * Good plans at once, each better than the one before: for the most promising sets of vendors every line at its cheapest.
 *
 * Exact where no offer is shared and no vendor has a threshold; the bound holds always. Yields nothing where no set of
 * vendors was found that serves all lines, which does not prove that there is none.
 */
export function* firstPlans(basket: Basket): Generator<Plan, void, void> {
  const scope = scopeOf(basket);
  const { ranked, bound } = rankedSets(basket, scope, lineTables(scope, basket.lines));
  let least = Number.POSITIVE_INFINITY;
  for (const { set } of ranked.slice(0, SETS_TRIED)) {
    const plan = planFrom(basket, scope, set, bound);
    if (!plan || plan.cost >= least) continue;
    least = plan.cost;
    yield plan;
  }
}

/**
 * Every line at its cheapest from a set of vendors; lines that share an offer share its packs and breaks in turn.
 *
 * @param choose How a line chooses among its offers; at their prices when left out.
 */
export function planFrom(
  basket: Basket,
  scope: Scope,
  set: VendorSet,
  bound = 0,
  choose: typeof cheapestMix = cheapestMix,
): Plan | null {
  const allowed = new Set(scope.vendors.filter((_, i) => set[i]));
  const offers = basket.lines.map(
    (line) => [line, scope.byLine.get(line.id)!.filter(({ vendor }) => allowed.has(vendor))] as const,
  );
  const taken = new Map<Candidate, number>();
  const supplies: Plan["supplies"][number][] = [];
  const fewestFirst = offers.sort(([, a], [, b]) => a.length - b.length);
  for (const [line, own] of fewestFirst) {
    const priced = own.map((candidate) => ({
      candidate,
      curve: after(candidate, taken.get(candidate) ?? 0, line.pieces),
    }));
    const choice = choose(line, priced);
    if (!choice) return null;
    for (const { candidate, pieces } of choice.shares) {
      taken.set(candidate, (taken.get(candidate) ?? 0) + pieces);
      supplies.push({ offer: candidate.offer.id, line: line.id, pieces });
    }
  }
  const bought = [...taken].map(([{ offer }, pieces]) => ({
    offer: offer.id,
    units: cheapestUnits(offer, pieces)!.units,
  }));
  const orders = toppedUp(basket, scope, bought);
  const cost = costOf(basket, orders);
  return cost < Number.POSITIVE_INFINITY ? { cost, bound: Math.min(bound, cost), orders, supplies } : null;
}

/** An offer of which others have taken pieces already: what more of it costs on top. */
function after({ curve }: Candidate, taken: number, pieces: number): Float64Array {
  if (taken === 0) return curve;
  return Float64Array.from(
    { length: pieces + 1 },
    (_, p) => (curve[taken + p] ?? Number.POSITIVE_INFINITY) - curve[taken]!,
  );
}
