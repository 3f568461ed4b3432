import type { Span } from "../part.js";
import type { OfferIndex, Shelf } from "./offerIndex.js";
import { distanceOf } from "./rank.js";

/**
 * A walk along a shelf from the value wanted outwards, nearest first, cheapest first among equals.
 *
 * `left` and `right` are the next places downwards and upwards, -1 where that side is done; `step` moves them.
 */
export type ShelfWalk = {
  readonly shelf: Shelf;
  readonly from: number;
  readonly to: number;
  left: number;
  right: number;
};

/** A walk over the places of a shelf whose value lies in the span; null where there are none. */
export function walkFrom(
  { values, runFrom }: OfferIndex,
  shelf: Shelf,
  wanted: number | null,
  span: Span | null,
): ShelfWalk | null {
  const from = span ? firstNotBelow(values, shelf.from, shelf.to, span.min * (1 - 1e-8)) : shelf.from;
  const to = span ? firstNotBelow(values, from, shelf.to, span.max * (1 + 1e-8)) : shelf.to;
  if (from >= to) return null;
  const right = wanted === null ? from : firstNotBelow(values, from, to, wanted);
  return {
    shelf,
    from,
    to,
    left: right > from ? Math.max(runFrom[right - 1]!, from) : -1,
    right: right < to ? right : -1,
  };
}

/** The next place of a walk and what any place still to come is at least: distance, and price of a piece. */
export type Ahead = { readonly place: number; readonly distance: number; readonly price: number };

/** What comes next on a walk, or null at its end. */
export function ahead(index: OfferIndex, walk: ShelfWalk, wanted: number | null): Ahead | null {
  const below = walk.left < 0 ? -1 : index.runFrom[walk.left]! - 1;
  const above = walk.right < 0 ? walk.to : index.runTo[walk.right]!;
  const left = walk.left < 0 ? null : side(index, walk.left, below >= walk.from ? below : null, wanted);
  const right = walk.right < 0 ? null : side(index, walk.right, above < walk.to ? above : null, wanted);
  if (!left || !right) return left ?? right;
  const isLeft = left.distance < right.distance || (left.distance === right.distance && left.price <= right.price);
  return isLeft ? left : right;
}

/** Of values whose distances round to one, the cheaper may stand beyond: then any price is still possible. */
function side({ values, cheapest }: OfferIndex, place: number, beyond: number | null, wanted: number | null): Ahead {
  const distance = distanceOf(values[place]!, wanted);
  const isAlone = beyond === null || distanceOf(values[beyond]!, wanted) > distance;
  return { place, distance, price: isAlone ? cheapest[place]! : 0 };
}

/** Goes one place on, on the side that `ahead` named. */
export function step({ runFrom, runTo }: OfferIndex, walk: ShelfWalk, place: number): void {
  if (place === walk.right) {
    walk.right = place + 1 < walk.to ? place + 1 : -1;
  } else if (place + 1 < runTo[place]!) {
    walk.left = place + 1;
  } else {
    const before = runFrom[place]! - 1;
    walk.left = before >= walk.from ? Math.max(runFrom[before]!, walk.from) : -1;
  }
}

/** The first place from which on values are not below the one given. */
function firstNotBelow(values: Float64Array, from: number, to: number, value: number): number {
  let [low, high] = [from, to];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
