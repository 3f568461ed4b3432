import type { BasketLine } from "../plan.js";
import { addAmount, addChoice, addCount, atLeast, atMost, type Draft, type Terms } from "./milp.js";
import { type VendorColumns, worthOfThresholds } from "./modelVendor.js";
import type { Candidate } from "./scope.js";
import { cheapestUnits, type Tier, tiersOf } from "./units.js";

/** One price of an offer: how many times its multiple is bought at that price, and whether it is. */
export type TierColumns = { readonly tier: Tier; readonly multiples: number; readonly chosen: number };

/**
 * What an offer gives to one line: each of the column stands for so many pieces.
 *
 * An offer that fits one line gives it what is bought; a shared one has a column of its own for each line: pieces, or
 * for a line of one source a choice that stands for all of them.
 */
export type FlowColumn = { readonly line: BasketLine; readonly column: number; readonly pieces: number };

/** All columns of an offer. */
export type OfferColumns = {
  readonly candidate: Candidate;
  readonly tiers: readonly TierColumns[];
  readonly flows: readonly FlowColumn[];
};

/** Adds an offer: one tier at most and only from a vendor in use, multiples within the tier, and pieces given out of units bought. */
export function addOffer(draft: Draft, candidate: Candidate, vendor: VendorColumns): OfferColumns {
  const { lines } = candidate;
  const tiers = usefulTiers(candidate).map((tier) => addTier(draft, candidate, tier));
  atMost(draft, [...tiers.map(({ chosen }) => [chosen, 1] as const), [vendor.used, -1]], 0);
  const flows = lines.length === 1 ? flowsOfOne(candidate, tiers) : addFlows(draft, candidate, tiers);
  return { candidate, tiers, flows };
}

function flowsOfOne({ offer, lines }: Candidate, tiers: readonly TierColumns[]): FlowColumn[] {
  const line = lines[0]!;
  return tiers.map(({ multiples, chosen }) =>
    line.single
      ? { line, column: chosen, pieces: line.pieces }
      : { line, column: multiples, pieces: offer.multiple * offer.pack },
  );
}

/** A column for each line that shares the offer; together they give no more than is bought. */
function addFlows(draft: Draft, { offer, lines }: Candidate, tiers: readonly TierColumns[]): FlowColumn[] {
  const flows = lines.map((line): FlowColumn => {
    const column = line.single ? addChoice(draft, 0) : addAmount(draft, 0, line.pieces);
    return { line, column, pieces: line.single ? line.pieces : 1 };
  });
  const given: Terms = flows.map(({ column, pieces }) => [column, pieces]);
  const bought: Terms = tiers.map(({ multiples }) => [multiples, -offer.multiple * offer.pack]);
  atMost(draft, [...given, ...bought], 0);
  return flows;
}

function addTier(draft: Draft, { offer, vendor }: Candidate, tier: Tier): TierColumns {
  const [least, most] = [tier.least / offer.multiple, tier.most / offer.multiple];
  const multiples = addCount(draft, tier.price * offer.multiple * vendor.rate, most);
  const chosen = addChoice(draft, 0);
  atLeast(
    draft,
    [
      [multiples, 1],
      [chosen, -least],
    ],
    0,
  );
  atMost(
    draft,
    [
      [multiples, 1],
      [chosen, -most],
    ],
    0,
  );
  return { tier, multiples, chosen };
}

/**
 * The tiers that an optimal plan may use, cut to the units it may use.
 *
 * Nobody buys more than all lines want, unless a break or a threshold of the vendor pays for it (see `worthOfThresholds`).
 * An offer for one line of one source starts at that line's pieces.
 */
export function usefulTiers({ offer, vendor, lines, demand }: Candidate): readonly Tier[] {
  const { saves, demands } = worthOfThresholds(vendor);
  const enough = inMultiples(offer, Math.ceil(demand / offer.pack));
  const cover = cheapestUnits(offer, demand)?.cost ?? Number.POSITIVE_INFINITY;
  const floor = lines.length === 1 && lines[0]!.single ? enough : 1;
  return tiersOf(offer).flatMap(({ least, most, price }) => {
    const start = Math.max(least, floor);
    const step = price * offer.multiple;
    const surplus = price > 0 ? Math.floor(saves / step) + Math.ceil(demands / step) : 0;
    const end = Math.min(most, Math.max(start, enough) + surplus * offer.multiple);
    const dear = demands === 0 && start >= enough && start * price > cover + saves;
    return start > end || dear ? [] : [{ least: start, most: end, price }];
  });
}

const inMultiples = ({ multiple }: { readonly multiple: number }, units: number) =>
  Math.ceil(units / multiple) * multiple;
