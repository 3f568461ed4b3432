import type { Span } from "../part.js";
import { JOINS, type Join } from "./forms.js";
import { SLACK, type Test } from "./meets.js";
import { opposition } from "./network.js";
import { type IndexedSums, reciprocals, type Sums, sortedPairs, sortedSingles } from "./sortedSums.js";
import { numbersOf, type StockPart } from "./stock.js";
import { bearableVolts, bearableWatts, type Wants } from "./wants.js";

/** What the whole may come to, narrowed while better networks are found. */
export type Limits = { low: number; high: number };

/**
 * All that is needed to find and to test the networks whose outermost join adds: the numbers that add (ohms for a
 * series, siemens for a parallel), their reciprocals, and sums of two of either.
 */
export type Side = SideSums & {
  readonly test: Test;
  /** The reciprocal of what each part counts, by its place. */
  readonly inverse: Float64Array;
  /** What share of the whole each part may take of what the outermost join adds, by its place; null: any. */
  readonly caps: Float64Array | null;
  readonly limits: Limits;
};

type SideSums = {
  readonly singles: Sums;
  readonly inverses: Sums;
  readonly pairs: IndexedSums;
  readonly inversePairs: IndexedSums;
  /** What two dividing parts come to. */
  readonly blocks: Sums;
};

/** A stock from both sides: joined in series outermost, and in parallel outermost. */
export type Sides = Readonly<Record<Join, Side>>;

/** Both sides of a stock; sums of pairs only where four parts are allowed. `nominal` is for the printed values. */
export function sidesOf(parts: readonly StockPart[], wants: Wants, nominal: Span): Sides {
  const ohms = numbersOf(parts, ({ value }) => opposition(value, wants.kind));
  const siemens = ohms.map((one) => 1 / one);
  const sums = sumsOf(ohms, siemens, (wants.mostParts ?? 4) > 3);
  const [series, parallel] = JOINS.map((outer): Side => {
    const [numbers, inverse] = outer === "series" ? [ohms, siemens] : [siemens, ohms];
    const test = testOf(parts, wants, outer, numbers);
    const { min: low, max: high } = inUnits(nominal, outer);
    return { ...sums[outer], test, inverse, caps: capsOf(test, low), limits: { low, high } };
  });
  return { series: series!, parallel: parallel! };
}

/** A span of oppositions in the numbers that a join adds. */
function inUnits({ min, max }: Span, outer: Join): Span {
  return outer === "series" ? { min, max } : { min: 1 / max, max: 1 / min };
}

function testOf(parts: readonly StockPart[], wants: Wants, outer: Join, numbers: Float64Array): Test {
  const { kind, window } = wants;
  // Farads in parallel add as ohms in series do.
  const addsValues = (kind === "capacitor") === (outer === "parallel");
  const number = (value: number) => (addsValues ? value : 1 / value);
  const ratios = (bearable: (part: StockPart, wants: Wants) => number, whole: number | null | undefined) =>
    numbersOf(parts, (part) => bearable(part, wants) / (whole || 1));
  return {
    outer,
    window: addsValues ? window : { min: 1 / window.max, max: 1 / window.min },
    numbers,
    ends: [
      numbersOf(parts, ({ value, tolerance }) => number(value * (1 - (tolerance?.minus ?? 0)))),
      numbersOf(parts, ({ value, tolerance }) => number(value * (1 + (tolerance?.plus ?? 0)))),
    ],
    hasTolerance: parts.some(({ tolerance }) => tolerance !== null),
    ratios:
      wants.watts || wants.volts
        ? { watts: ratios(bearableWatts, wants.watts), volts: ratios(bearableVolts, wants.volts) }
        : null,
  };
}

/** Sums already sorted: sorting takes as long as searching, and a column asks for many values of one stock. */
const remembered: { readonly ohms: Float64Array; readonly deep: boolean; readonly sums: Record<Join, SideSums> }[] = [];
const MOST_REMEMBERED = 2;

function sumsOf(ohms: Float64Array, siemens: Float64Array, deep: boolean): Record<Join, SideSums> {
  const isSame = (known: Float64Array) => known.length === ohms.length && known.every((one, i) => one === ohms[i]);
  const known = remembered.find((one) => one.deep === deep && isSame(one.ohms));
  if (known) return known.sums;
  const sums = sortedSums(ohms, siemens, deep);
  remembered.unshift({ ohms, deep, sums });
  remembered.splice(MOST_REMEMBERED);
  return sums;
}

function sortedSums(ohms: Float64Array, siemens: Float64Array, deep: boolean): Record<Join, SideSums> {
  const [adding, dividing] = [sortedSingles(ohms), sortedSingles(siemens)];
  const pairsOf = (numbers: Float64Array) => sortedPairs(deep ? numbers : new Float64Array(0));
  const [pairs, inversePairs] = [pairsOf(ohms), pairsOf(siemens)];
  const [blocks, inverseBlocks] = [reciprocals(inversePairs), reciprocals(pairs)];
  return {
    series: { singles: adding, inverses: dividing, pairs, inversePairs, blocks },
    parallel: { singles: dividing, inverses: adding, pairs: inversePairs, inversePairs: pairs, blocks: inverseBlocks },
  };
}

/**
 * The share that each part may take of what the outermost join adds.
 *
 * Of W watts in all, a part that takes the share v of the volts takes v² R / r of the watts, and with the share i of the
 * current i² r / R; the whole is taken at its `least`, which lets more through: what is left is looked at again.
 */
function capsOf({ ratios, numbers, outer }: Test, least: number): Float64Array | null {
  if (!ratios) return null;
  const more = 1 + 2 * SLACK;
  return numbers.map((number, i) => {
    const [watts, volts] = [ratios.watts[i]! * more, ratios.volts[i]! * more];
    return Math.min(Math.sqrt((watts * number) / least), outer === "series" ? volts : (volts * number) / least);
  });
}

/** Narrows what both sides look for to what is no further off than `reach`. */
export function narrow(sides: Sides, aim: number, nominal: Span, reach: number): void {
  const ratio = Math.exp(reach + 1e-12);
  const near = { min: Math.max(nominal.min, aim / ratio), max: Math.min(nominal.max, aim * ratio) };
  for (const outer of JOINS) {
    const { min, max } = inUnits(near, outer);
    sides[outer].limits.low = min;
    sides[outer].limits.high = max;
  }
}
