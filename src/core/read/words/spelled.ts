import type { Token } from "./token.js";

const ONES =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
/** Numbers said in one word. */
export const SMALL: ReadonlyMap<string, number> = new Map([
  ...ONES.map((word, value) => [word, value] as const),
  ...TENS.map((word, index) => [word, (index + 2) * 10] as const),
  ["half", 1 / 2],
  ["quarter", 1 / 4],
  ["third", 1 / 3],
  ["halbe", 1 / 2],
]);
/** Words that multiply the number before them. */
export const SCALES: ReadonlyMap<string, number> = new Map([
  ["hundred", 100],
  ["thousand", 1000],
  ["million", 1e6],
]);

/** The number spelled out in words from a token on ("three hundred", "one half"), and where it ends; or null. */
export function spelledAt(tokens: readonly Token[], at: number): { number: number; to: number } | null {
  let [total, group, to] = [0, Number.NaN, at];
  for (; to < tokens.length; to++) {
    const { number, scale } = tokens[to]!.lexeme;
    if (tokens[to]!.text === "-" && to > at) continue;
    if (number === null && scale === null) break;
    if (number !== null) group = number < 1 ? number * (group || 1) : (group || 0) + number;
    else if (scale === 100) group = (group || 1) * 100;
    else [total, group] = [total + (group || 1) * scale!, 0];
  }
  return Number.isNaN(group) && total === 0 ? null : { number: total + (group || 0), to };
}
