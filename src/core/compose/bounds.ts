import { SLACK } from "./meets.js";
import type { StockPart } from "./stock.js";
import { bearableVolts, bearableWatts, type Wants } from "./wants.js";

/**
 * What every part spends of something that a network has only so much of: of the price, or of the ratings that it may
 * fall short of the best part by. `spent` goes by the part's place.
 */
export type Allowance = { readonly spent: Float64Array; readonly left: number };

/** What holds for every network of so many parts, whatever its form. */
export type Bounds = {
  /** Each part takes at least this share of the power, for the others can't take more than the rest of it. */
  readonly least: number;
  readonly most: number;
  readonly allowances: readonly Allowance[];
};

/**
 * The bounds of a network of `count` of these parts; null where no such network can meet the wants.
 *
 * The shares of the power add up to 1, and no part's share is above its share of the volts: so the best ratings of
 * `count` parts have to come to the whole, and where they barely do, every part is among the best and fully used.
 */
export function boundsOf(parts: readonly StockPart[], count: number, wants: Wants): Bounds | null {
  const bears = wants.watts || wants.volts ? parts.map((part) => ratioBorne(part, wants)) : null;
  if (bears && bestSum(parts, bears, count) < 1) return null;
  const least = bears ? Math.max(0, 1 - bestSum(parts, bears, count - 1)) : 0;
  const allowances = [bears && shortfall(bears, count), pricesOf(parts, count, wants)].filter((one) => one !== null);
  if (allowances.some(({ left }) => left < 0)) return null;
  return { least, most: 1 - (count - 1) * least, allowances: allowances.filter((one) => forbids(one, count)) };
}

/** Whether there are so many parts at all that spend too much. */
function forbids({ spent, left }: Allowance, count: number): boolean {
  return spent.some((one) => one * count > left);
}

/** Whether parts at these places leave enough of every allowance, be the others what they may. */
export function leavesEnough({ allowances }: Bounds, places: readonly number[]): boolean {
  for (const { spent, left } of allowances) {
    let rest = left;
    for (const place of places) rest -= spent[place]!;
    if (rest < 0) return false;
  }
  return true;
}

/** The share of the whole's power that a part bears at the most. */
function ratioBorne(part: StockPart, wants: Wants): number {
  const watts = bearableWatts(part, wants) / (wants.watts || 1);
  const volts = bearableVolts(part, wants) / (wants.volts || 1);
  return Math.min(watts, volts) * (1 + 2 * SLACK);
}

/** What `count` parts bear together if each is the best that is left. */
function bestSum(parts: readonly StockPart[], bears: readonly number[], count: number): number {
  return parts
    .flatMap(({ pieces }, at) => new Array<number>(Math.min(count, pieces ?? count)).fill(bears[at]!))
    .sort((a, b) => b - a)
    .slice(0, count)
    .reduce((sum, one) => sum + one, 0);
}

/** By how much the parts may stay behind the best one, all together. */
function shortfall(bears: readonly number[], count: number): Allowance | null {
  const best = Math.max(...bears);
  if (!(best < 1)) return null;
  return { spent: Float64Array.from(bears, (one) => best - one), left: count * best - 1 };
}

function pricesOf(parts: readonly StockPart[], count: number, { mostPrice }: Wants): Allowance | null {
  if (mostPrice == null) return null;
  const prices = parts.map(({ price }) => price ?? Number.POSITIVE_INFINITY);
  const cheapest = Math.min(...prices);
  return {
    spent: Float64Array.from(prices, (one) => one - cheapest),
    left: mostPrice * (1 + 2 * SLACK) - count * cheapest,
  };
}
