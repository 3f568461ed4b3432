import type { ListedPart } from "../part.js";
import { type Assignment, assign, exchangeMargin } from "./assign.js";
import { type Disagreement, disagreements } from "./disagreements.js";
import { type Candidate, likeness } from "./likeness.js";
import { sectionPoints } from "./sections.js";
import { wordsOf, worth } from "./words.js";

/** One part under both its names. `confidence` runs from 0 to 1; from 0.8 on it is sure enough to be offered as settled. */
export type CrosswalkPair = {
  readonly factory: ListedPart;
  readonly service: ListedPart;
  readonly confidence: number;
  readonly disagree: readonly Disagreement[];
};

/** Two documents of one set side by side; parts that have no partner are the set's own in that document. */
export type Crosswalk = {
  readonly pairs: readonly CrosswalkPair[];
  readonly onlyFactory: readonly ListedPart[];
  readonly onlyService: readonly ListedPart[];
};

/** Fewer points than this are no match. */
const LEAST = 0.5;
/** A first look for learning which sections answer to each other takes only clear matches. */
const CLEAR = 4;

/**
 * Which part of one document is which of the other: by kind, value, ratings, use, section and order.
 *
 * A proposal: nothing is taken in silence, the person confirms. Disagreements name each field that both state differently.
 *
 * @example crosswalk(factoryParts, serviceParts).pairs[0]!.confidence
 */
export function crosswalk(factory: readonly ListedPart[], service: readonly ListedPart[]): Crosswalk {
  const [own, other] = [candidates(factory), candidates(service)];
  const worthOf = worth([...own, ...other]);
  const first = own.map((a) => other.map((b) => likeness(a, b, worthOf)));
  const clear = assign(first, CLEAR).map(([i, j]) => ({ factory: factory[i]!, service: service[j]! }));
  const place = sectionPoints(clear);
  const points = first.map((row, i) => row.map((value, j) => value + place(factory[i]!, service[j]!)));
  const assignment = assign(points, LEAST);
  const pairs = assignment.map(([i, j]) => ({
    factory: factory[i]!,
    service: service[j]!,
    confidence: confidenceOf(points, assignment, [i, j], factory, service),
    disagree: disagreements(factory[i]!, service[j]!),
  }));
  const [rows, columns] = [new Set(assignment.map(([i]) => i)), new Set(assignment.map(([, j]) => j))];
  return {
    pairs,
    onlyFactory: factory.filter((_, i) => !rows.has(i)),
    onlyService: service.filter((_, j) => !columns.has(j)),
  };
}

/** The parts with their words and their places among those of their kind. */
function candidates(parts: readonly ListedPart[]): Candidate[] {
  const total = new Map<string, number>();
  const ranks = parts.map(({ kind }) => {
    const rank = total.get(kind) ?? 0;
    total.set(kind, rank + 1);
    return rank;
  });
  return parts.map((part, i) => ({
    part,
    words: wordsOf(part),
    place: ranks[i]! / Math.max(1, total.get(part.kind)! - 1),
  }));
}

/** Points at which a match is good in itself, and a lead at which no other comes near. */
const GOOD = 3.5;
const LEAD = 1.6;
/** A proposal is never certain. */
const SUREST = 0.97;

/**
 * How sure a pair is: by its own points, and by its lead over every other way to pair the two. Twins in one document are
 * taken in the order of the lists.
 */
function confidenceOf(
  points: readonly (readonly number[])[],
  pairs: Assignment,
  [i, j]: readonly [number, number],
  factory: readonly ListedPart[],
  service: readonly ListedPart[],
): number {
  const [rows, columns] = [new Map(pairs), new Map(pairs.map(([row, column]) => [column, row]))];
  let lead = Number.POSITIVE_INFINITY;
  points[i]!.forEach((value, l) => {
    if (l === j || value <= LEAST || isTwin(service[j]!, service[l]!)) return;
    const k = columns.get(l);
    if (k !== undefined && isTwin(factory[i]!, factory[k]!) && i < k === j < l) return;
    lead = Math.min(lead, k === undefined ? points[i]![j]! - value : exchangeMargin(points, i, j, k, l));
  });
  points.forEach((row, k) => {
    if (k !== i && row[j]! > LEAST && !rows.has(k)) lead = Math.min(lead, points[i]![j]! - row[j]!);
  });
  const own = Math.min(1, points[i]![j]! / GOOD);
  return Number((SUREST * own * (1 - 0.5 * Math.exp(-Math.max(0, lead) * LEAD))).toFixed(2));
}

/** Two parts of one document that may be taken for each other without harm. */
function isTwin(a: ListedPart, b: ListedPart): boolean {
  const key = ({ kind, section, value, watts, volts, tolerance }: ListedPart) =>
    JSON.stringify([kind, section, value, watts, volts, tolerance]);
  return key(a) === key(b);
}
