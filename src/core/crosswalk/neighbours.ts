import type { ListedPart } from "../part.js";
import type { Assignment } from "./assign.js";

/** Points by how many places two parts are off from where their neighbours put them. */
const BY_PLACES_OFF = [1.2, 0.6, 0, -0.4] as const;

/** Two parts whose neighbours of the same kind are the same parts: how many places off they are; null without such neighbours. */
export type PlacesOff = (row: number, column: number) => number | null;

/**
 * Where the neighbours in the lists put a part, learned from a first pairing: who numbers a set goes along its circuit, so that
 * the part before and the part after are mostly the same ones in both documents.
 */
export function placesOff(
  factory: readonly ListedPart[],
  service: readonly ListedPart[],
  pairs: Assignment,
): PlacesOff {
  const [own, other] = [ranks(factory), ranks(service)];
  const partners = new Map(pairs);
  const sides = factory.map((part, i) => [
    nearest(factory, partners, i, -1, part.kind),
    nearest(factory, partners, i, 1, part.kind),
  ]);
  return (i, j) => {
    const off = sides[i]!.flatMap((near) => {
      if (near === null || service[j]!.kind !== factory[near]!.kind) return [];
      return [Math.abs(other[j]! - other[partners.get(near)!]! - (own[i]! - own[near]!))];
    });
    return off.length === 0 ? null : Math.min(...off);
  };
}

/** The points for being so many places off. */
export const neighbourPoints = (off: number | null): number =>
  off === null ? 0 : BY_PLACES_OFF[Math.min(off, BY_PLACES_OFF.length - 1)]!;

/** The place of each part among those of its kind. */
function ranks(parts: readonly ListedPart[]): readonly number[] {
  const counts = new Map<string, number>();
  return parts.map(({ kind }) => {
    const rank = counts.get(kind) ?? 0;
    counts.set(kind, rank + 1);
    return rank;
  });
}

function nearest(
  parts: readonly ListedPart[],
  partners: ReadonlyMap<number, number>,
  from: number,
  step: 1 | -1,
  kind: ListedPart["kind"],
): number | null {
  for (let at = from + step; at >= 0 && at < parts.length; at += step)
    if (parts[at]!.kind === kind && partners.has(at)) return at;
  return null;
}
