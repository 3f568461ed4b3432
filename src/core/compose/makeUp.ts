import { finished } from "../longWork.js";
import { type Bounds, boundsOf } from "./bounds.js";
import { FORMS, JOINS } from "./forms.js";
import { consider, isBrokenOff, isSettled, type Lookout, lookout } from "./lookout.js";
import { largestFirst, type Network, networkValue, partsOf, withValues } from "./network.js";
import { type Share, sharesOf } from "./shares.js";
import type { Candidate } from "./shortlist.js";
import { fewParts, fourParts, type Hit } from "./sideSearch.js";
import type { StockPart } from "./stock.js";
import type { Wants } from "./wants.js";

/** A value made up from stock: what it comes to, how far off (0.01 is 1 % above), each part's share, and the price. */
export type MadeUp = {
  readonly network: Network<StockPart>;
  readonly value: number;
  readonly off: number;
  readonly parts: readonly StockPart[];
  readonly shares: readonly Share[];
  readonly price: number | null;
};

/** The best networks found; `complete` is false where the search was broken off, so that better ones may exist. */
export type MadeUpList = { readonly found: readonly MadeUp[]; readonly complete: boolean };

/**
 * The best networks of up to four parts over all series-parallel forms, each part bearing its share.
 *
 * Exact: nothing in the stock makes a network that meets the wants and comes before those listed; nearness is by
 * ratio. Where the answer is not complete, the search met too many networks that a rating or a price forbids.
 *
 * @throws PartsError too-much for a stock of more than 1,200 values (four parts) or 10,000 (fewer)
 * @example makeUp({ kind: "resistor", wanted: 3e6, window: { min: 2.97e6, max: 3.03e6 }, stock }).found[0]
 */
export function makeUp(wants: Wants): MadeUpList {
  return finished(makingUp(wants));
}

/** The same in steps, for long work: each tells the best so far to whom asks, and the last is the answer. */
export function* makingUp(wants: Wants): Generator<() => MadeUpList, MadeUpList> {
  const look = lookout(wants);
  for (let count = wants.leastParts ?? 1; count <= (wants.mostParts ?? 4) && !isSettled(look); count++) {
    const bounds = boundsOf(look.parts, count, wants);
    if (bounds) for (const _ of networksOf(look, bounds, count)) yield () => answer(look);
  }
  return answer(look);
}

function* networksOf(look: Lookout, bounds: Bounds, count: number): Generator<void, void> {
  if (count === 1) {
    for (const place of look.parts.keys()) consider(look, bounds, "series", FORMS.a, [place]);
    return;
  }
  for (const outer of JOINS) {
    if (look.wants.only && look.wants.only !== outer) continue;
    const hit: Hit = (form, places) => consider(look, bounds, outer, form, places);
    const side = look.sides[outer];
    if (count < 4) fewParts(side, bounds, count === 2 ? 2 : 3, hit);
    else yield* fourParts(side, bounds, hit);
    yield;
  }
}

function answer(look: Lookout): MadeUpList {
  return { found: look.list.best.map((one) => madeUp(one, look.wants)), complete: !isBrokenOff(look) };
}

function madeUp({ network: found, price, distance }: Candidate, { kind, wanted }: Wants): MadeUp {
  const network = largestFirst(found(), kind);
  const values = withValues(network);
  // 15 figures drop the dust of binary fractions: 220 pF beside 30 pF is 250 pF, not 249.99999999999997.
  const value = Number(networkValue(values, kind).toPrecision(15));
  return {
    network,
    value,
    off: distance === 0 ? 0 : value / wanted - 1,
    parts: partsOf(network),
    shares: sharesOf(values, kind),
    price: Number.isFinite(price) ? price : null,
  };
}
