import { type DecimalMark, digitsEnd, scanNumber } from "../../quantity/notation/number.js";
import { type Unit, unitNamed } from "../../quantity/notation/units.js";
import { repairFigures } from "./noise.js";

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
  /** Whether a letter had to be read as a figure. */
  readonly repaired: boolean;
};

const LETTER = /[\p{L}µμΩω°]/u;
const isLetterCode = (code: number) => (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
const isDigitCode = (code: number) => code >= 48 && code <= 57;

function isLetter(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return isLetterCode(code) || (code > 127 && LETTER.test(text[at]!));
}
const isDigit = (text: string, at: number) => isDigitCode(text.charCodeAt(at));

/** How a document writes: its decimal mark, and whether letters stand for figures throughout (a poor scan). */
export type Writing = { readonly mark: DecimalMark; readonly noisy: boolean };

/** How most lists write. */
export const PLAIN_WRITING: Writing = { mark: "point", noisy: false };

/** The text's tokens from left to right; nothing but blanks is left out. */
export function tokensOf(printed: string, { mark, noisy }: Writing = PLAIN_WRITING): Token[] {
  const { text, spans } = repairFigures(printed, noisy);
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 32 || code === 9 || code === 10 || code === 160) {
      at++;
      continue;
    }
    const token = numberAt(text, at, mark) ?? wordAt(text, at) ?? sign(text, at);
    const repaired = spans.some(([from, to]) => from < token.end && to > token.start);
    tokens.push(repaired ? { ...token, repaired } : token);
    at = token.end;
  }
  return tokens;
}

function token(type: Token["type"], text: string, start: number, end: number, more: Partial<Token> = {}): Token {
  const own = text.slice(start, end);
  return {
    type,
    text: own,
    key: own.toLowerCase(),
    start,
    end,
    value: Number.NaN,
    fraction: false,
    unit: null,
    repaired: false,
    ...more,
  };
}

const sign = (text: string, at: number) => token("sign", text, at, at + 1);

function lettersEnd(text: string, at: number): number {
  let end = at;
  while (end < text.length && isLetter(text, end)) end++;
  return end;
}

function alnumEnd(text: string, at: number): number {
  let end = at;
  while (end < text.length && (isLetter(text, end) || isDigit(text, end))) end++;
  return end;
}

/** "2x500 pF", "8x8 mfd": a count or a list of capacitances written close; 6X4 is a code. */
const TIMES = /^x(?=\d+(?:[.,]\d+)?\s*(?:[pnuµμ]F|m?mfd?|uu?f)\b)/i;

/** A number; 4K7 (and 1M5: a million in this notation) with its letter as the point; 12AX7 and the like as a code. */
function numberAt(text: string, at: number, mark: DecimalMark): Token | null {
  const isDots = text[at] === "." && text[at - 1] === ".";
  const number = isDots ? null : scanNumber(text, at, mark);
  if (!number) return null;
  const letters = TIMES.test(text.slice(number.end)) ? number.end : lettersEnd(text, number.end);
  if (letters > number.end && isDigit(text, letters)) return letterAsPoint(text, at, number.value, number.end, letters);
  return token("number", text, at, number.end, { value: number.value, fraction: number.fraction });
}

const POINT_LETTERS = /^(?:[RrEΩkKMmuµμnp]|[uµμnp]F|[kM]Ω|meg)$/;

function letterAsPoint(text: string, at: number, whole: number, letter: number, digits: number): Token {
  const word = text.slice(letter, digits);
  const end = digitsEnd(text, digits);
  const after = lettersEnd(text, end);
  const unit = POINT_LETTERS.test(word) && Number.isInteger(whole) ? unitNamed(word) : undefined;
  const outer = after > end ? unitNamed(text.slice(end, after)) : null;
  if (!unit || outer === undefined) return token("code", text, at, alnumEnd(text, letter));
  const value = Number(`${whole}.${text.slice(digits, end)}`);
  const { factor, measure } = unit;
  return token("number", text, at, after, { value, unit: { factor, measure: outer?.measure ?? measure } });
}

/** A word with its inner dots ("W.V."), or a code of letters and digits. */
function wordAt(text: string, at: number): Token | null {
  let end = lettersEnd(text, at);
  if (end === at) return null;
  if (isDigit(text, at - 1) && TIMES.test(text.slice(at))) return token("word", text, at, at + 1);
  if (isDigit(text, end)) return token("code", text, at, alnumEnd(text, at));
  while (end - at <= 12 && text[end] === "." && isAbbreviation(text, at, end)) end = lettersEnd(text, end + 1);
  const key = text.slice(at, end).toLowerCase().replaceAll(".", "");
  return token("word", text, at, end, { key });
}

/** "W.V" goes on after a dot when single letters stand on both sides: "A.C.", "d.c.w.v.". */
function isAbbreviation(text: string, at: number, dot: number): boolean {
  const before = text.lastIndexOf(".", dot - 1);
  const isSingle = dot - Math.max(before + 1, at) === 1;
  return isSingle && isLetter(text, dot + 1) && !isLetter(text, dot + 2) && !isDigit(text, dot + 2);
}
