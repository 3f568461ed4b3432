import type { Token } from "./tokens.js";
import type { ColourReading } from "./words.js";

/** Colours as digits, IEC 60062:2016. */
const DIGITS: Readonly<Record<string, number>> = {
  black: 0, brown: 1, red: 2, orange: 3, yellow: 4, green: 5, blue: 6, violet: 7, purple: 7, gray: 8, grey: 8, white: 9,
}; // biome-ignore format: a table
const TOLERANCES: Readonly<Record<string, number>> = { gold: 0.05, silver: 0.1, brown: 0.01, red: 0.02 };

/** The value that colour names joined by hyphens say (brown-black-red-gold), IEC 60062:2016, or null. */
export function coloursOf(tokens: readonly Token[]): ColourReading | null {
  for (let at = 0; at + 4 < tokens.length; at++) {
    const names = [0, 2, 4].map((step) => DIGITS[tokens[at + step]!.key]);
    const joined = tokens[at + 1]!.text === "-" && tokens[at + 3]!.text === "-";
    if (!joined || names.some((digit) => digit === undefined)) continue;
    const fourth = tokens[at + 5]?.text === "-" ? TOLERANCES[tokens[at + 6]?.key ?? ""] : undefined;
    const [tens, ones, zeros] = names as [number, number, number];
    return { ohms: (tens * 10 + ones) * Number(`1e${zeros}`), tolerance: fourth ?? null };
  }
  return null;
}
