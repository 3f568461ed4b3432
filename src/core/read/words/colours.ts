import type { Token } from "./token.js";
import type { ColourReading } from "./words.js";

/** Colours as digits, with the short forms that are written on drawers, IEC 60062:2016. */
const NAMES: readonly (readonly [names: string, digit: number])[] = [
  ["black blk bk", 0],
  ["brown brn bn", 1],
  ["red rd", 2],
  ["orange orn org or", 3],
  ["yellow yel ye", 4],
  ["green grn gn", 5],
  ["blue blu bl bu", 6],
  ["violet vio purple pur", 7],
  ["gray grey gry gy", 8],
  ["white wht wh", 9],
];
/** The digit of each colour name. */
export const DIGITS: ReadonlyMap<string, number> = new Map(
  NAMES.flatMap(([names, digit]) => names.split(" ").map((name) => [name, digit] as const)),
);
const TOLERANCES: Readonly<Record<string, number>> = {
  gold: 0.05,
  gld: 0.05,
  silver: 0.1,
  sil: 0.1,
  brown: 0.01,
  brn: 0.01,
  red: 0.02,
};
const MULTIPLIERS: Readonly<Record<string, number>> = { gold: 0.1, gld: 0.1, silver: 0.01, sil: 0.01 };

/**
 * The value that three colour names in a row say (brown-black-red-gold, red red orn), with the fourth band's tolerance
 * where it is named; null where there are none.
 *
 * @see IEC 60062:2016
 */
export function coloursOf(tokens: readonly Token[]): ColourReading | null {
  if (!tokens.some((token) => token.lexeme.digit !== null)) return null;
  const words = tokens.filter((token) => token.text !== "-" && token.text !== "/");
  for (let at = 0; at + 2 < words.length; at++) {
    const [tens = null, ones = null, third = null] = words.slice(at, at + 3).map((word) => word.lexeme.digit);
    const multiplier = third === null ? MULTIPLIERS[words[at + 2]!.key] : Number(`1e${third}`);
    if (tens === null || ones === null || multiplier === undefined) continue;
    const fourth = TOLERANCES[words[at + 3]?.key ?? ""];
    return { ohms: Number(((tens * 10 + ones) * multiplier).toPrecision(3)), tolerance: fourth ?? null };
  }
  return null;
}
