import type { ListedPart } from "../part.js";
import type { Assignment } from "./assign.js";

const SAME_PLACE = 1.5;
const OTHER_PLACE = -2;
const FEW = 0.15;

/**
 * Points for two parts standing in sections that answer to each other, learned from a first pairing: the sections of
 * two documents have other names, and one may cover two of the other's. By rows of both documents.
 */
export function sectionPoints(
  factory: readonly ListedPart[],
  service: readonly ListedPart[],
  pairs: Assignment,
): (row: number, column: number) => number {
  const [own, other] = [areasOf(factory), areasOf(service)];
  const votes = new Map<string, number>();
  const ofOwn = new Map<string, number>();
  for (const [i, j] of pairs) {
    const key = `${own[i]}\n${other[j]}`;
    votes.set(key, (votes.get(key) ?? 0) + 1);
    ofOwn.set(own[i]!, (ofOwn.get(own[i]!) ?? 0) + 1);
  }
  return (i, j) => {
    const share = (votes.get(`${own[i]}\n${other[j]}`) ?? 0) / Math.max(1, ofOwn.get(own[i]!) ?? 0);
    return share > FEW ? SAME_PLACE : OTHER_PLACE;
  };
}

/** The section of each part; in a document without sections the hundred of its number, where parts are numbered by hundreds. */
function areasOf(parts: readonly ListedPart[]): readonly string[] {
  const hundreds = parts.map(({ designators }) => /\d(?=\d\d[A-Z]?$)/i.exec(designators[0] ?? "")?.[0] ?? "");
  const isByHundreds = parts.every(({ section }) => section === null) && new Set(hundreds).size > 2;
  return parts.map(({ section }, i) => (isByHundreds ? hundreds[i]! : (section ?? "")));
}
