import type { Basket, BasketLine, Plan } from "../plan.js";

/** Pieces that flow from an offer to a line. */
export type Supply = Plan["supplies"][number];

/**
 * Whole pieces from the offers bought to the lines they fit, every line served in full; null where that can't be.
 *
 * @param bought Pieces there are of each offer.
 * @param sources For each line that must be alike, the offer it comes from.
 */
export function allocate(
  basket: Basket,
  bought: ReadonlyMap<string, number>,
  sources: ReadonlyMap<string, string>,
): readonly Supply[] | null {
  const stores: Stores = { left: new Map(bought), given: new Map(basket.lines.map((line) => [line.id, new Map()])) };
  for (const line of basket.lines.filter(({ single }) => single)) {
    const source = sources.get(line.id);
    if (source === undefined || take(stores, line, source) < line.pieces) return null;
  }
  const free = basket.lines.filter(({ single }) => !single);
  for (const line of free) for (const id of line.fits) take(stores, line, id);
  for (const line of free) while (missing(stores, line) > 0) if (!reroute(stores, line, free)) return null;
  return [...stores.given].flatMap(([line, from]) =>
    [...from].filter(([, pieces]) => pieces > 0).map(([offer, pieces]) => ({ offer, line, pieces })),
  );
}

/** What is left of each offer, and what each line was given of each. */
type Stores = { readonly left: Map<string, number>; readonly given: Map<string, Map<string, number>> };

const missing = ({ given }: Stores, line: BasketLine): number =>
  line.pieces - [...given.get(line.id)!.values()].reduce((sum, pieces) => sum + pieces, 0);

/** Moves as many pieces of an offer as there are, and as the line still misses. @returns How many. */
function take(stores: Stores, line: BasketLine, offer: string): number {
  const pieces = Math.min(stores.left.get(offer) ?? 0, missing(stores, line));
  if (pieces > 0) move(stores, line.id, offer, pieces);
  return pieces;
}

function move({ left, given }: Stores, line: string, offer: string, pieces: number): void {
  left.set(offer, (left.get(offer) ?? 0) - pieces);
  const from = given.get(line)!;
  from.set(offer, (from.get(offer) ?? 0) + pieces);
}

/**
 * One more piece for a line: another line gives up one of an offer that fits here and takes one from elsewhere, which a third may give up for it.
 *
 * An augmenting path of Ford and Fulkerson (1956), found breadth first.
 */
function reroute(stores: Stores, wanting: BasketLine, lines: readonly BasketLine[]): boolean {
  const cameBy = new Map<string, { readonly line: BasketLine; readonly before: string | null }>();
  const queue: { readonly line: BasketLine; readonly before: string | null }[] = [{ line: wanting, before: null }];
  for (const step of queue) {
    for (const offer of step.line.fits) {
      if (cameBy.has(offer)) continue;
      cameBy.set(offer, step);
      if ((stores.left.get(offer) ?? 0) > 0) return shift(stores, offer, cameBy);
      const holders = lines.filter(({ id }) => (stores.given.get(id)!.get(offer) ?? 0) > 0);
      queue.push(...holders.map((line) => ({ line, before: offer })));
    }
  }
  return false;
}

/** Walks a path back: each line on it takes one piece of the offer it was reached by and gives up one of the offer before. */
function shift(
  stores: Stores,
  last: string,
  cameBy: ReadonlyMap<string, { readonly line: BasketLine; readonly before: string | null }>,
): boolean {
  let offer: string | null = last;
  while (offer !== null) {
    const { line, before }: { readonly line: BasketLine; readonly before: string | null } = cameBy.get(offer)!;
    move(stores, line.id, offer, 1);
    if (before !== null) move(stores, line.id, before, -1);
    offer = before;
  }
  return true;
}
