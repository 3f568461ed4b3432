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

const POINT = "point";

/** Words that a spelled-out number may begin with. */
export const NUMBER_WORDS: ReadonlySet<string> = new Set([...SMALL.keys(), ...SCALES.keys(), POINT]);

/** The number spelled out in words from a token on ("three hundred and thirty", "one half", "point five"), and where it ends; or null. */
export function spelledAt(tokens: readonly Token[], at: number): { number: number; to: number } | null {
  if (tokens[at]!.key === POINT) return decimalsAt(tokens, at + 1);
  let [total, group, to] = [0, Number.NaN, at];
  for (; to < tokens.length; to++) {
    const key = tokens[to]!.key;
    const small = SMALL.get(key);
    const scale = SCALES.get(key);
    if (to > at && (key === "-" || isLink(tokens, to))) continue;
    if (small === undefined && scale === undefined) break;
    if (small !== undefined) group = small < 1 ? small * (group || 1) : (group || 0) + small;
    else if (scale === 100) group = (group || 1) * 100;
    else [total, group] = [total + (group || 1) * scale!, 0];
  }
  return Number.isNaN(group) && total === 0 ? null : { number: total + (group || 0), to };
}

/** "and" between hundreds and the rest. */
const isLink = (tokens: readonly Token[], at: number) =>
  tokens[at]!.key === "and" && SCALES.has(tokens[at - 1]!.key) && SMALL.has(tokens[at + 1]?.key ?? "");

/** Figures spelled behind the point, one by one: "point zero five". */
function decimalsAt(tokens: readonly Token[], at: number): { number: number; to: number } | null {
  let [digits, to] = ["", at];
  for (; to < tokens.length; to++) {
    const figure = SMALL.get(tokens[to]!.key);
    if (figure === undefined || figure > 9 || !Number.isInteger(figure)) break;
    digits += figure;
  }
  return digits === "" ? null : { number: Number(`0.${digits}`), to };
}
