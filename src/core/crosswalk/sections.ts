import type { ListedPart } from "../part.js";

/** Two parts taken as one for a first look. */
type Pair = { readonly factory: ListedPart; readonly service: ListedPart };

const SAME_PLACE = 1.5;
const OTHER_PLACE = -2;
const FEW = 0.15;

/**
 * Points for two parts standing in sections that answer to each other, learned from a first pairing: the sections of
 * two documents have other names, and one may cover two of the other's.
 */
export function sectionPoints(pairs: readonly Pair[]): (a: ListedPart, b: ListedPart) => number {
  const votes = new Map<string, number>();
  const ofFactory = new Map<string | null, number>();
  for (const { factory, service } of pairs) {
    const key = keyOf(factory, service);
    votes.set(key, (votes.get(key) ?? 0) + 1);
    ofFactory.set(factory.section, (ofFactory.get(factory.section) ?? 0) + 1);
  }
  return (a, b) => {
    const share = (votes.get(keyOf(a, b)) ?? 0) / Math.max(1, ofFactory.get(a.section) ?? 0);
    return share > FEW ? SAME_PLACE : OTHER_PLACE;
  };
}

const keyOf = (a: ListedPart, b: ListedPart) => `${a.section}\n${b.section}`;
