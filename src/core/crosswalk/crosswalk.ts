import type { ListedPart } from "../part.js";
import { assign } from "./assign.js";
import { confidences } from "./confidence.js";
import { type Disagreement, disagreements } from "./disagreements.js";
import { type Candidate, makeOf, type Sign, signsOf } from "./evidence.js";
import { neighbourPoints, type PlacesOff, placesOff } from "./neighbours.js";
import { becauseOf } from "./reasons.js";
import { sectionPoints } from "./sections.js";
import { wordsOf, worth } from "./words.js";

/**
 * One part under both its names. `confidence` runs from 0 to 1; from 0.8 on it is sure enough to be offered as settled.
 * `because` is what speaks for the pair, in words, the weightiest first.
 */
export type CrosswalkPair = {
  readonly factory: ListedPart;
  readonly service: ListedPart;
  readonly confidence: number;
  readonly because: readonly string[];
  readonly disagree: readonly Disagreement[];
};

/** Two documents of one set side by side; parts that have no partner are the set's own in that document. */
export type Crosswalk = {
  readonly pairs: readonly CrosswalkPair[];
  readonly onlyFactory: readonly ListedPart[];
  readonly onlyService: readonly ListedPart[];
};

/** What the person said of a pair before: the same part, another part, or nothing. */
export type Known = (factory: ListedPart, service: ListedPart) => "same" | "another" | null;

/** Fewer points than this are no match. */
const LEAST = 0.5;
/** A first look for learning which sections and neighbours answer to each other takes only clear matches. */
const CLEAR = 4;
/** What the person said outweighs all signs. */
const SAID = 1000;

/**
 * Which part of one document is which of the other: by kind, value, ratings, use, section and neighbours.
 *
 * A proposal: nothing is taken in silence, the person confirms. Disagreements name each field that both state differently.
 *
 * @param known What the person said of pairs before: said pairs stand, and teach which sections answer to each other.
 * @example crosswalk(factoryParts, serviceParts).pairs[0]!.confidence
 */
export function crosswalk(
  factory: readonly ListedPart[],
  service: readonly ListedPart[],
  known: Known = () => null,
): Crosswalk {
  const signs = signTable(factory, service);
  const said = factory.map((a) => service.map((b) => SAID_POINTS[known(a, b) ?? "nothing"]));
  const alone = signs.map((row, i) => row.map((own, j) => sum(own) + said[i]![j]!));
  const clear = assign(alone, CLEAR);
  const inPlace = sectionPoints(factory, service, clear);
  const off = placesOff(factory, service, clear);
  const points = alone.map((row, i) => row.map((value, j) => value + inPlace(i, j) + neighbourPoints(off(i, j))));
  const pairs = assign(points, LEAST);
  const sure = confidences({ points, pairs, factory, service, isFirm: (i, j) => isFirm(signs[i]![j]!, off(i, j)) });
  const [rows, columns] = [new Set(pairs.map(([i]) => i)), new Set(pairs.map(([, j]) => j))];
  return {
    pairs: pairs.map(([i, j], nth) => ({
      factory: factory[i]!,
      service: service[j]!,
      confidence: said[i]![j]! > 0 ? 1 : sure[nth]!,
      because: becauseOf(factory[i]!, service[j]!, signs[i]![j] ?? [], inPlace(i, j), off(i, j)),
      disagree: disagreements(factory[i]!, service[j]!),
    })),
    onlyFactory: factory.filter((_, i) => !rows.has(i)),
    onlyService: service.filter((_, j) => !columns.has(j)),
  };
}

const SAID_POINTS = { same: SAID, another: Number.NEGATIVE_INFINITY, nothing: 0 } as const;

const sum = (signs: readonly Sign[] | null) =>
  signs === null ? Number.NEGATIVE_INFINITY : signs.reduce((total, { points }) => total + points, 0);

/** A pair of two values is firm only where its neighbours or its words say so too: it may be two parts that are left over. */
function isFirm(signs: readonly Sign[] | null, off: ReturnType<PlacesOff>): boolean {
  const differs = signs?.some(({ name }) => name === "nearValue" || name === "farValue" || name === "otherValue");
  const said = signs?.find(({ name }) => name === "words")?.points ?? 0;
  return !differs || (off !== null && off <= 1) || said >= WORDS_ENOUGH;
}

/** Words worth this much name a part by themselves. */
const WORDS_ENOUGH = 2;

function signTable(factory: readonly ListedPart[], service: readonly ListedPart[]) {
  const [own, other] = [candidates(factory), candidates(service)];
  const worthOf = worth([...own, ...other]);
  return own.map((a) => other.map((b) => signsOf(a, b, worthOf)));
}

/** The parts with their words, their places among those of their kind, and how many of their kind and make there are. */
function candidates(parts: readonly ListedPart[]): Candidate[] {
  const total = new Map<string, number>();
  const count = (key: string) => total.set(key, (total.get(key) ?? 0) + 1).get(key)! - 1;
  const makeKey = (part: ListedPart) => `${part.kind} ${makeOf(part)}`;
  const ranks = parts.map((part) => {
    count(makeKey(part));
    return count(part.kind);
  });
  return parts.map((part, i) => {
    const ofItsKind = total.get(part.kind)!;
    const place = ranks[i]! / Math.max(1, ofItsKind - 1);
    return { part, words: wordsOf(part), place, ofItsKind, ofItsMake: total.get(makeKey(part))! };
  });
}
