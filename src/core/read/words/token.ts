import type { Unit } from "../../quantity/notation/units.js";
import type { Lexeme } from "./lexeme.js";

/**
 * A piece of a text with where it stood.
 *
 * `number` carries its value, and its unit where a letter stood for the point (4K7); `word` its key (lower case, no dots
 * or hyphens: "W.V." is "wv"); `code` is letters and digits mixed (RC20BF474K, 12AX7); `sign` any one other character.
 */
export type Token = {
  readonly type: "number" | "word" | "code" | "sign";
  readonly text: string;
  readonly key: string;
  readonly start: number;
  readonly end: number;
  readonly value: number;
  readonly fraction: boolean;
  readonly unit: Unit | null;
  /** What the word or sign can be in this notation. */
  readonly lexeme: Lexeme;
  /** Whether a letter had to be read as a figure. */
  readonly repaired: boolean;
};

/** Whether one token is written close to the next. */
export const touches = (a: Token | undefined, b: Token | undefined) =>
  a !== undefined && b !== undefined && a.end === b.start;
