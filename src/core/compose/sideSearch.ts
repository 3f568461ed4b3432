import { FORMS, type Form } from "./forms.js";
import { firstFrom, type IndexedSums, keptSums, type Sums } from "./sortedSums.js";

/** What the whole may come to, narrowed while better networks are found. */
export type Limits = { low: number; high: number };

/**
 * All that is needed to find the networks whose outermost join adds: the numbers that add (ohms for a series, siemens
 * for a parallel), their reciprocals, sums of two of either, and the reciprocals of the latter (`blocks`).
 */
export type Side = {
  readonly singles: Sums;
  readonly inverses: Sums;
  readonly pairs: IndexedSums;
  readonly inversePairs: IndexedSums;
  readonly blocks: Sums;
  /** What share of the whole each single may bear, by its place; null: any. */
  readonly caps: Float64Array | null;
  readonly limits: Limits;
};

/** Called with each network that lies within the limits; `parts` are places of singles. */
export type Hit = (form: Form, parts: readonly number[]) => void;

/** Networks of one, two or three parts; linear and square in the number of singles. */
export function fewParts(side: Side, count: 2 | 3, hit: Hit): void {
  const { limits, inverses } = side;
  const singles = bearingTerms(side, side.singles);
  if (count === 2) {
    sumsWithin(singles, singles, limits, (i, j) => hit(FORMS["a+b"], [singles.first[i]!, singles.first[j]!]));
    return;
  }
  for (let at = 0; at < singles.sums.length && singles.sums[at]! < limits.high; at++) {
    const c = singles.first[at]!;
    const rest = without(limits, singles.sums[at]!);
    sumsWithin(singles, singles, rest, (i, j) => hit(FORMS["a+b+c"], [singles.first[i]!, singles.first[j]!, c]));
    const [bears, block] = [bearing(side, rest), inverseOf(rest)];
    sumsWithin(inverses, inverses, block, (i, j) => {
      const [a, b] = [inverses.first[i]!, inverses.first[j]!];
      if (bears(a) && bears(b)) hit(FORMS["(a|b)+c"], [a, b, c]);
    });
  }
}

/** Networks of four parts: every sum of two pairs, then for each single what completes it. Yields now and then. */
export function* fourParts(side: Side, hit: Hit): Generator<void, void> {
  const { limits } = side;
  const singles = bearingTerms(side, side.singles);
  const pairs = bearingTerms(side, side.pairs);
  const blocks = bearingBlocks(side);
  const sums = (form: Form, a: Sums, b: Sums) =>
    sumsWithin(a, b, limits, (i, j) => hit(form, [a.first[i]!, a.second[i]!, b.first[j]!, b.second[j]!]));
  sums(FORMS["a+b+c+d"], pairs, pairs);
  yield;
  sums(FORMS["(a|b)+c+d"], blocks, pairs);
  yield;
  sums(FORMS["(a|b)+(c|d)"], blocks, blocks);
  const caps = side.caps && { pairs: pairCaps(side), inversePairs: inversePairCaps(side) };
  for (let at = 0; at < singles.sums.length && singles.sums[at]! < limits.high; at++) {
    if (at % 32 === 0) yield;
    threeBeside(side, caps, singles.first[at]!, singles.sums[at]!, hit);
  }
}

/** Whether a part bears what a block that dividing parts make up has across it. */
function bearing({ caps, limits }: Side, block: Limits): (place: number) => boolean {
  const share = block.low / limits.high;
  return (place) => !caps || caps[place]! >= share;
}

type PairCaps = { readonly pairs: Float64Array; readonly inversePairs: Float64Array };

/**
 * Blocks of three that complete `d`: (a|b|c)+d and ((a+b)|c)+d, each c met with the indexed pairs. Plain numbers and one
 * look at the limits for each d: this is where a search spends its time.
 */
function threeBeside(side: Side, caps: PairCaps | null, d: number, dNumber: number, hit: Hit): void {
  const { inverses, limits, pairs, inversePairs } = side;
  const block = inverseOf(without(limits, dNumber));
  const share = 1 / block.high / limits.high;
  for (let at = 0; at < inverses.sums.length; at++) {
    const [low, high] = [block.low - inverses.sums[at]!, block.high - inverses.sums[at]!];
    if (high <= 0) break;
    const c = inverses.first[at]!;
    if (side.caps && side.caps[c]! < share) continue;
    for (let i = firstFrom(inversePairs, low); inversePairs.sums[i]! <= high; i++) {
      if (caps && caps.inversePairs[i]! < share) continue;
      if (inversePairs.second[i]! > c) continue;
      hit(FORMS["(a|b|c)+d"], [inversePairs.first[i]!, inversePairs.second[i]!, c, d]);
    }
    const most = low > 0 ? 1 / low : Number.POSITIVE_INFINITY;
    for (let i = firstFrom(pairs, 1 / high); pairs.sums[i]! <= most; i++) {
      if (caps && caps.pairs[i]! < share) continue;
      hit(FORMS["((a+b)|c)+d"], [pairs.first[i]!, pairs.second[i]!, c, d]);
    }
  }
}

/** Every sum of a term of `a` and one of `b` within the limits, which may narrow meanwhile. */
function sumsWithin(a: Sums, b: Sums, limits: Limits, found: (i: number, j: number) => void): void {
  const isSame = a === b;
  let top = b.sums.length - 1;
  for (let i = 0; i < a.sums.length; i++) {
    while (top >= 0 && a.sums[i]! + b.sums[top]! > limits.high) top--;
    const least = isSame ? i : 0;
    for (let j = top; j >= least && a.sums[i]! + b.sums[j]! >= limits.low; j--) found(i, j);
  }
}

/** What is left for the rest when one term is taken. */
function without({ low, high }: Limits, term: number): Limits {
  return { low: low - term, high: high - term };
}

/** Limits for the reciprocal; a limit at or below 0 means that there is none on that side. */
function inverseOf({ low, high }: Limits): Limits {
  return {
    low: high > 0 ? 1 / high : Number.POSITIVE_INFINITY,
    high: low > 0 ? 1 / low : Number.POSITIVE_INFINITY,
  };
}

/** Sums whose terms all bear what the outermost join puts on them: each its own share of the whole. */
function bearingTerms({ caps, singles, limits }: Side, terms: Sums): Sums {
  if (!caps) return terms;
  const bears = new Uint8Array(caps.length);
  singles.first.forEach((place, at) => {
    if (singles.sums[at]! <= limits.high * caps[place]!) bears[place] = 1;
  });
  return keptSums(
    terms,
    (at) => bears[terms.first[at]!] === 1 && (terms.second[at]! < 0 || bears[terms.second[at]!] === 1),
  );
}

/** Blocks of two that divide, both of which bear the block's share of the whole. */
function bearingBlocks({ caps, blocks, limits }: Side): Sums {
  if (!caps) return blocks;
  return keptSums(
    blocks,
    (at) => blocks.sums[at]! <= limits.high * Math.min(caps[blocks.first[at]!]!, caps[blocks.second[at]!]!),
  );
}

/** The share that a block of two terms that divide bears: that of the weaker one. */
function inversePairCaps({ caps, inversePairs }: Side): Float64Array {
  return inversePairs.sums.map((_, at) => Math.min(caps![inversePairs.first[at]!]!, caps![inversePairs.second[at]!]!));
}

/** The share that two terms in a chain bear together: each takes its part of it. */
function pairCaps({ caps, pairs, singles }: Side): Float64Array {
  const number = new Float64Array(caps!.length);
  singles.first.forEach((place, at) => {
    number[place] = singles.sums[at]!;
  });
  const bearing = (place: number, sum: number) => (caps![place]! * sum) / number[place]!;
  return pairs.sums.map((sum, at) => Math.min(bearing(pairs.first[at]!, sum), bearing(pairs.second[at]!, sum)));
}
