import type { Token } from "./token.js";

const ONES =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
const SMALL: ReadonlyMap<string, number> = new Map([
  ...ONES.map((word, value) => [word, value] as const),
  ...TENS.map((word, index) => [word, (index + 2) * 10] as const),
  ["half", 1 / 2],
  ["quarter", 1 / 4],
  ["third", 1 / 3],
  ["halbe", 1 / 2],
]);
const SCALES: ReadonlyMap<string, number> = new Map([
  ["hundred", 100],
  ["thousand", 1000],
  ["million", 1e6],
]);

/** Words that a spelled-out number may begin with. */
export const NUMBER_WORDS: ReadonlySet<string> = new Set([...SMALL.keys(), ...SCALES.keys()]);

/** The number spelled out in words from a token on ("three hundred", "one half"), and where it ends; or null. */
export function spelledAt(tokens: readonly Token[], at: number): { number: number; to: number } | null {
  let [total, group, to] = [0, Number.NaN, at];
  for (; to < tokens.length; to++) {
    const key = tokens[to]!.key;
    const small = SMALL.get(key);
    const scale = SCALES.get(key);
    if (key === "-" && to > at) continue;
    if (small === undefined && scale === undefined) break;
    if (small !== undefined) group = small < 1 ? small * (group || 1) : (group || 0) + small;
    else if (scale === 100) group = (group || 1) * 100;
    else [total, group] = [total + (group || 1) * scale!, 0];
  }
  return Number.isNaN(group) && total === 0 ? null : { number: total + (group || 0), to };
}
