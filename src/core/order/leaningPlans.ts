import type { Basket, Plan, Vendor } from "../plan.js";
import { billsOf, reaches } from "./bills.js";
import { planFrom } from "./firstPlan.js";
import { cheapestMix } from "./lineCost.js";
import { type Candidate, type Scope, scopeOf } from "./scope.js";
import { cheapestUnits } from "./units.js";

/** The most that a vendor's prices are thought lower to draw lines to it, as a ratio. */
const MOST_LEAN = 0.5;

/** How often the least lean that reaches a threshold is halved. */
const HALVINGS = 7;

/** So often all vendors are gone through; later rounds find little. */
const ROUNDS = 4;

/** What a vendor's prices are thought lower by when lines choose, as ratios; money is always counted at the real prices. */
type Lean = ReadonlyMap<string, number>;

/**
 * Plans that draw lines to vendors just short of a threshold: free shipping, a spared fee, a minimum without waste.
 *
 * Many lines that each move at a small loss may be worth one parcel. A vendor's prices are thought lower by the least
 * ratio that lets its goods reach the threshold, all lines choose anew, and the plan is kept where it is really cheaper.
 * Yields the best plan so far after each trial, so that whoever asks may stop; ends when no vendor gains by it.
 *
 * @param first The plan to better, and the vendors it orders from.
 * @example for (const plan of leaningPlans(basket, first)) if (isLate()) break;
 */
export function* leaningPlans(basket: Basket, first: Plan): Generator<Plan, void, void> {
  const scope = scopeOf(basket);
  const used = new Set(billsOf(basket, first.orders).map(({ vendor }) => vendor));
  const set = scope.vendors.map(({ id }) => used.has(id));
  const planBy = leaningPlanner(basket, scope, set, first.bound);
  let best = first;
  let lean: Lean = new Map();
  for (let round = 0, before = Number.POSITIVE_INFINITY; round < ROUNDS && best.cost < before; round++) {
    before = best.cost;
    for (const vendor of scope.vendors.filter((_, i) => set[i]))
      for (const threshold of thresholdsOf(vendor)) {
        if (reaches(goodsOf(basket, best, vendor), threshold)) continue;
        const plan = (ratio: number) => planBy(new Map(lean).set(vendor.id, ratio));
        for (const { trial, ratio } of trials(basket, vendor, threshold, lean.get(vendor.id) ?? 0, plan)) {
          if (trial.cost < best.cost) [best, lean] = [trial, new Map(lean).set(vendor.id, ratio)];
          yield best;
        }
      }
  }
}

const thresholdsOf = ({ freeFrom, minimumOrder }: Vendor): readonly number[] =>
  [minimumOrder, freeFrom].filter((threshold) => threshold !== null);

/** What the pieces that lines get from a vendor cost, without any that only fill the order up. */
function goodsOf({ offers }: Basket, { supplies }: Plan, { id }: Vendor): number {
  const given = new Map<string, number>();
  for (const { offer, pieces } of supplies) given.set(offer, (given.get(offer) ?? 0) + pieces);
  const own = offers.filter(({ vendor, id: offer }) => vendor === id && given.has(offer));
  return own.reduce((sum, offer) => sum + (cheapestUnits(offer, given.get(offer.id)!)?.cost ?? 0), 0);
}

/** Plans on the way to the least ratio at which a vendor's goods reach a threshold. */
function* trials(
  basket: Basket,
  vendor: Vendor,
  threshold: number,
  from: number,
  planAt: (ratio: number) => Plan | null,
): Generator<{ readonly trial: Plan; readonly ratio: number }, void, void> {
  let [short, enough] = [from, MOST_LEAN];
  for (let halving = 0; halving <= HALVINGS; halving++) {
    const ratio = halving === 0 ? enough : (short + enough) / 2;
    const trial = planAt(ratio);
    const isEnough = trial !== null && reaches(goodsOf(basket, trial, vendor), threshold);
    if (trial) yield { trial, ratio };
    if (halving === 0 && !isEnough) return;
    if (isEnough) enough = ratio;
    else short = ratio;
  }
}

/** Makes plans of lines that choose by leaned prices; their cost is that of the real ones. A line that chose by the same prices before is remembered. */
function leaningPlanner(basket: Basket, scope: Scope, set: readonly boolean[], bound: number) {
  const known = new Map<string, ReturnType<typeof cheapestMix>>();
  return (lean: Lean): Plan | null => {
    const choose: typeof cheapestMix = (line, offers) => {
      if (offers.some(({ candidate }) => candidate.lines.length > 1)) return cheapestMix(line, offers);
      const name = `${line.id}\n${offers.map(({ candidate }) => lean.get(candidate.vendor.id) ?? 0).join()}`;
      const choice = known.get(name) ?? cheapestMix(line, offers);
      known.set(name, choice);
      return choice;
    };
    const leaned = new Map(scope.candidates.map((candidate) => [candidate, leanedCandidate(candidate, lean)]));
    const byLine = new Map([...scope.byLine].map(([line, offers]) => [line, offers.map((one) => leaned.get(one)!)]));
    return planFrom(basket, { ...scope, candidates: [...leaned.values()], byLine }, set, bound, choose);
  };
}

function leanedCandidate(candidate: Candidate, lean: Lean): Candidate {
  const ratio = lean.get(candidate.vendor.id) ?? 0;
  return ratio === 0 ? candidate : { ...candidate, curve: candidate.curve.map((cost) => cost * (1 - ratio)) };
}
