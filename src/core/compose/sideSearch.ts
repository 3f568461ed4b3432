import { type Bounds, leavesEnough } from "./bounds.js";
import { FORMS, type Form } from "./forms.js";
import type { Limits, Side } from "./sides.js";
import { firstFrom, keptSums, type Sums } from "./sortedSums.js";

/** Called with each network that lies within the limits; `places` are those of its parts. */
export type Hit = (form: Form, places: readonly number[]) => void;

/** Networks of two or three parts; linear and square in the number of singles. */
export function fewParts(side: Side, bounds: Bounds, count: 2 | 3, hit: Hit): void {
  const { limits } = side;
  const singles = bearingTerms(side, bounds, side.singles);
  if (count === 2) {
    sumsWithin(singles, singles, limits, (i, j) => hit(FORMS["a+b"], [singles.first[i]!, singles.first[j]!]));
    return;
  }
  for (let at = 0; at < singles.sums.length && singles.sums[at]! < limits.high; at++) {
    const c = singles.first[at]!;
    const rest = without(limits, singles.sums[at]!);
    sumsWithin(singles, singles, rest, (i, j) => {
      if (j <= at) hit(FORMS["a+b+c"], [singles.first[i]!, singles.first[j]!, c]);
    });
    twoBeside(side, bounds, rest, c, hit);
  }
}

/** Blocks of two that complete `c`: (a|b)+c. */
function twoBeside({ inverses, caps, limits }: Side, bounds: Bounds, rest: Limits, c: number, hit: Hit): void {
  const block = inverseOf(rest);
  const share = rest.low / limits.high;
  const least = leastInverse(bounds, block, limits);
  sumsWithin(inverses, inverses, block, (i, j) => {
    if (inverses.sums[i]! < least) return;
    const [a, b] = [inverses.first[i]!, inverses.first[j]!];
    if (!caps || (caps[a]! >= share && caps[b]! >= share)) hit(FORMS["(a|b)+c"], [a, b, c]);
  });
}

/** Networks of four parts: every sum of two pairs, then for each single what completes it. Yields now and then. */
export function* fourParts(side: Side, bounds: Bounds, hit: Hit): Generator<void, void> {
  const { limits } = side;
  const pairs = bearingTerms(side, bounds, side.pairs);
  const blocks = bearingBlocks(side, bounds);
  const sums = (form: Form, a: Sums, b: Sums) =>
    sumsWithin(a, b, limits, (i, j) => hit(form, [a.first[i]!, a.second[i]!, b.first[j]!, b.second[j]!]));
  sums(FORMS["a+b+c+d"], pairs, pairs);
  yield;
  sums(FORMS["(a|b)+c+d"], blocks, pairs);
  yield;
  sums(FORMS["(a|b)+(c|d)"], blocks, blocks);
  const singles = bearingTerms(side, bounds, side.singles);
  const caps = side.caps && { pairs: pairCaps(side), inversePairs: inversePairCaps(side) };
  for (let at = 0; at < singles.sums.length && singles.sums[at]! < limits.high; at++) {
    if (at % 32 === 0) yield;
    threeBeside(side, bounds, caps, singles.first[at]!, hit);
  }
}

type PairCaps = { readonly pairs: Float64Array; readonly inversePairs: Float64Array };

/**
 * Blocks of three that complete `d`: (a|b|c)+d and ((a+b)|c)+d, each c met with the indexed pairs.
 *
 * Plain numbers and one look at the limits for each d: this is where a search spends its time. In (a|b|c) the c is the
 * one with the largest reciprocal, which so is at least a third of the block's.
 */
function threeBeside(side: Side, bounds: Bounds, caps: PairCaps | null, d: number, hit: Hit): void {
  const { inverses, inverse, limits, pairs, inversePairs } = side;
  const block = inverseOf(without(limits, side.test.numbers[d]!));
  const share = 1 / block.high / limits.high;
  const least = leastInverse(bounds, block, limits);
  const third = (block.low / 3) * ROUNDED;
  const free = isFree(side, bounds);
  for (let at = 0; at < inverses.sums.length; at++) {
    const ofC = inverses.sums[at]!;
    if (ofC < least) continue;
    const [low, high] = [block.low - ofC, block.high - ofC];
    if (high <= 0) break;
    const c = inverses.first[at]!;
    if (!free && ((side.caps && side.caps[c]! < share) || !leavesEnough(bounds, [c, d]))) continue;
    if (ofC >= third) {
      for (let i = firstFrom(inversePairs, low); inversePairs.sums[i]! <= high; i++) {
        if (caps && caps.inversePairs[i]! < share) continue;
        const [a, b] = [inversePairs.first[i]!, inversePairs.second[i]!];
        if (inverse[a]! <= ofC && inverse[b]! <= ofC) hit(FORMS["(a|b|c)+d"], [a, b, c, d]);
      }
    }
    const most = low > 0 ? 1 / low : Number.POSITIVE_INFINITY;
    for (let i = firstFrom(pairs, 1 / high); pairs.sums[i]! <= most; i++) {
      if (caps && caps.pairs[i]! < share) continue;
      hit(FORMS["((a+b)|c)+d"], [pairs.first[i]!, pairs.second[i]!, c, d]);
    }
  }
}

/** A bound is moved by this much before it forbids anything, for what arithmetic rounds off. */
const ROUNDED = 1 - 1e-9;

/** The least reciprocal with which a part takes its least share of the power inside a block. */
function leastInverse({ least }: Bounds, block: Limits, { low }: Limits): number {
  return least * block.low * block.low * low * ROUNDED;
}

/** Every sum of a term of `a` and one of `b` within the limits, which may narrow meanwhile. */
function sumsWithin(a: Sums, b: Sums, limits: Limits, found: (i: number, j: number) => void): void {
  if (a === b) {
    evenSumsWithin(a.sums, limits, found);
    return;
  }
  const [of, and] = [a.sums, b.sums];
  let top = and.length - 1;
  for (let i = 0; i < of.length && top >= 0; i++) {
    const term = of[i]!;
    while (top >= 0 && term + and[top]! > limits.high) top--;
    for (let j = top; j >= 0 && term + and[j]! >= limits.low; j--) found(i, j);
  }
}

/** The same for two terms of one list, each sum once, equal terms first: those are likeliest to bear their shares. */
function evenSumsWithin(terms: Float64Array, limits: Limits, found: (i: number, j: number) => void): void {
  let top = 0;
  while (top < terms.length && 2 * terms[top]! <= limits.high) top++;
  for (let i = top - 1; i >= 0; i--) {
    const term = terms[i]!;
    while (top < terms.length && term + terms[top]! <= limits.high) top++;
    while (top > 0 && term + terms[top - 1]! > limits.high) top--;
    for (let j = top - 1; j >= i && term + terms[j]! >= limits.low; j--) found(i, j);
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

const isFree = ({ caps }: Side, { least, allowances }: Bounds) => !caps && least === 0 && allowances.length === 0;

/** Sums whose terms all bear what the outermost join puts on them, and take their least share: each its own of the whole. */
function bearingTerms(side: Side, bounds: Bounds, terms: Sums): Sums {
  if (isFree(side, bounds)) return terms;
  const { caps, limits, test } = side;
  const [least, most] = [bounds.least * limits.low * ROUNDED, (bounds.most * limits.high) / ROUNDED];
  const bears = Uint8Array.from(test.numbers, (number, place) =>
    number >= least && number <= most && (!caps || number <= limits.high * caps[place]!) ? 1 : 0,
  );
  return keptSums(terms, (at) => {
    const [a, b] = [terms.first[at]!, terms.second[at]!];
    if (b < 0) return bears[a] === 1 && leavesEnough(bounds, [a]);
    return bears[a] === 1 && bears[b] === 1 && leavesEnough(bounds, [a, b]);
  });
}

/** Blocks of two that divide, both of which bear the block's share of the whole and take their least. */
function bearingBlocks(side: Side, bounds: Bounds): Sums {
  const { caps, blocks, inverse, limits } = side;
  if (isFree(side, bounds)) return blocks;
  return keptSums(blocks, (at) => {
    const [block, a, b] = [blocks.sums[at]!, blocks.first[at]!, blocks.second[at]!];
    if (caps && block > limits.high * Math.min(caps[a]!, caps[b]!)) return false;
    const weaker = Math.min(inverse[a]!, inverse[b]!);
    return weaker >= leastInverse(bounds, { low: 1 / block, high: 1 / block }, limits) && leavesEnough(bounds, [a, b]);
  });
}

/** The share that a block of two terms that divide bears: that of the weaker one. */
function inversePairCaps({ caps, inversePairs }: Side): Float64Array {
  return inversePairs.sums.map((_, at) => Math.min(caps![inversePairs.first[at]!]!, caps![inversePairs.second[at]!]!));
}

/** The share that two terms in a chain bear together: each takes its part of it. */
function pairCaps({ caps, pairs, test: { numbers } }: Side): Float64Array {
  const bearing = (place: number, sum: number) => (caps![place]! * sum) / numbers[place]!;
  return pairs.sums.map((sum, at) => Math.min(bearing(pairs.first[at]!, sum), bearing(pairs.second[at]!, sum)));
}
