/** Names told when one is not known. */
const TOLD = 4;

const pairsOf = (name: string) => Array.from({ length: Math.max(0, name.length - 1) }, (_, i) => name.slice(i, i + 2));

/** How alike two names are, from 0 to 1: twice the pairs of letters they share over all they have (Dice). */
function likeness(a: string, b: string): number {
  const [mine, theirs] = [pairsOf(a), pairsOf(b)];
  const left = [...theirs];
  const shared = mine.filter((pair) => {
    const at = left.indexOf(pair);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  return (2 * shared.length) / Math.max(1, mine.length + theirs.length);
}

/**
 * The names most like one that is not known, the most alike first.
 *
 * A name that the unknown one begins (`elec_can` and `elec_can_insulated`), and one that shares its first word, count for more.
 *
 * @example nearestNames("elec_can", ["elec_single", "elec_can_insulated", "fuse"]) // ["elec_can_insulated", "elec_single"]
 */
export function nearestNames(name: string, names: readonly string[]): readonly string[] {
  const asked = name.trim().toLowerCase();
  const [first = ""] = asked.split(/[_ ]/);
  const points = (each: string) =>
    likeness(asked, each) + (each.startsWith(asked) ? 1 : 0) + (each.split("_")[0] === first ? 0.5 : 0);
  return names
    .map((each) => ({ each, points: points(each) }))
    .filter((found) => found.points > 0.3)
    .sort((a, b) => b.points - a.points)
    .slice(0, TOLD)
    .map(({ each }) => each);
}
