import type { ListedPart } from "../part.js";
import { type Assignment, exchangeMargin } from "./assign.js";
import { wordsOf } from "./words.js";

/** All that a pair's confidence rests on; `isFirm` is false for a pair that needs more than its points. */
export type Weighed = {
  readonly points: readonly (readonly number[])[];
  readonly pairs: Assignment;
  readonly factory: readonly ListedPart[];
  readonly service: readonly ListedPart[];
  readonly isFirm: (row: number, column: number) => boolean;
};

/** Points at which a match is good in itself, and a lead at which no other comes near. */
const GOOD = 3.5;
const LEAD = 1.6;
/** A proposal is never certain. */
const SUREST = 0.97;
/** One that is not firm is never sure. */
const SUREST_UNFIRM = 0.7;
/** A part that has at most this many points with any other is no rival. */
const RIVAL = 0.5;

/**
 * How sure each pair is, from 0 to 1: by its own points, and by its lead over every other way to pair the two. Twins in one
 * document are taken in the order of the lists.
 */
export function confidences(weighed: Weighed): readonly number[] {
  const { points, pairs, isFirm } = weighed;
  const [rows, columns] = [new Map(pairs), new Map(pairs.map(([row, column]) => [column, row]))];
  return pairs.map(([i, j]) => {
    const lead = Math.max(0, leadOf(weighed, rows, columns, i, j));
    const own = Math.min(1, points[i]![j]! / GOOD);
    const most = isFirm(i, j) ? SUREST : SUREST_UNFIRM;
    return Number((most * own * (1 - 0.5 * Math.exp(-lead * LEAD))).toFixed(2));
  });
}

function leadOf(
  { points, factory, service }: Weighed,
  rows: ReadonlyMap<number, number>,
  columns: ReadonlyMap<number, number>,
  i: number,
  j: number,
): number {
  const sameSection = (one: number, other: number) => service[one]!.section === service[other]!.section;
  let lead = Number.POSITIVE_INFINITY;
  points[i]!.forEach((value, l) => {
    if (l === j || value <= RIVAL || isTwin(service[j]!, service[l]!)) return;
    const k = columns.get(l);
    if (k !== undefined && isTwin(factory[i]!, factory[k]!) && sameSection(j, l) && i < k === j < l) return;
    lead = Math.min(lead, k === undefined ? points[i]![j]! - value : exchangeMargin(points, i, j, k, l));
  });
  points.forEach((row, k) => {
    if (k !== i && row[j]! > RIVAL && !rows.has(k)) lead = Math.min(lead, points[i]![j]! - row[j]!);
  });
  return lead;
}

/** Two parts of one document that may be taken for each other without harm; those without a value by their words. */
function isTwin(a: ListedPart, b: ListedPart): boolean {
  const key = (part: ListedPart) => {
    const { kind, section, value, watts, volts, tolerance } = part;
    return JSON.stringify([kind, section, value, watts, volts, tolerance, value === null && wordsOf(part)]);
  };
  return a.kind === b.kind && a.value === b.value && key(a) === key(b);
}
