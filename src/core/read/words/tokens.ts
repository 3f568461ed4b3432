import { type DecimalMark, digitsEnd, scanNumber } from "../../quantity/notation/number.js";
import { type Unit, unitNamed } from "../../quantity/notation/units.js";
import { lexemeOf, UNKNOWN } from "./lexicon.js";
import { type Repaired, repairFigures } from "./noise.js";
import type { Token } from "./token.js";

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
    const token = isLetter(text, at) ? wordAt(text, at) : (numberAt(text, at, mark) ?? sign(text, at));
    tokens.push(token);
    at = token.end;
  }
  return spans.length === 0 ? tokens : tokens.map((token) => ({ ...token, repaired: isRepaired(token, spans) }));
}

const isRepaired = (token: Token, spans: Repaired["spans"]) =>
  spans.some(([from, to]) => from < token.end && to > token.start);

/** A word, code or sign; its key is what it is looked up by. */
function named(type: "word" | "code" | "sign", text: string, key: string, start: number): Token {
  const end = start + text.length;
  return {
    type,
    text,
    key,
    start,
    end,
    value: Number.NaN,
    fraction: false,
    unit: null,
    lexeme: lexemeOf(text, key),
    repaired: false,
  };
}

function numeral(text: string, start: number, value: number, fraction: boolean, unit: Unit | null): Token {
  const end = start + text.length;
  const key = unit ? text.toLowerCase() : text;
  return { type: "number", text, key, start, end, value, fraction, unit, lexeme: UNKNOWN, repaired: false };
}

const sign = (text: string, at: number) => named("sign", text[at]!, text[at]!, at);

function codeAt(text: string, start: number, end: number): Token {
  const own = text.slice(start, end);
  return named("code", own, own.toLowerCase(), start);
}

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
const [SMALL_X, CAPITAL_X, POINT] = [120, 88, 46];

function isTimes(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return (code === SMALL_X || code === CAPITAL_X) && TIMES.test(text.slice(at));
}

/** A number; 4K7 (and 1M5: a million in this notation) with its letter as the point; 12AX7 and the like as a code. */
function numberAt(text: string, at: number, mark: DecimalMark): Token | null {
  const number = scanNumber(text, at, mark);
  if (!number || (at > 0 && text.charCodeAt(at) === POINT && text.charCodeAt(at - 1) === POINT)) return null;
  const letters = isTimes(text, number.end) ? number.end : lettersEnd(text, number.end);
  if (letters > number.end && isDigit(text, letters)) return letterAsPoint(text, at, number.value, number.end, letters);
  return numeral(text.slice(at, number.end), at, number.value, number.fraction, null);
}

const POINT_LETTERS = /^(?:[RrEΩkKMmuµμnp]|[uµμnp]F|[kM]Ω|meg)$/;

function letterAsPoint(text: string, at: number, whole: number, letter: number, digits: number): Token {
  const word = text.slice(letter, digits);
  const end = digitsEnd(text, digits);
  const after = lettersEnd(text, end);
  const unit = POINT_LETTERS.test(word) && Number.isInteger(whole) ? unitNamed(word) : undefined;
  const outer = after > end ? unitNamed(text.slice(end, after)) : null;
  if (!unit || outer === undefined) return codeAt(text, at, alnumEnd(text, letter));
  const value = Number(`${whole}.${text.slice(digits, end)}`);
  const { factor, measure } = unit;
  return numeral(text.slice(at, after), at, value, false, { factor, measure: outer?.measure ?? measure });
}

/** "A500K", "B1M": a letter for the taper before the value of a control (common practice). */
const TAPERED = /^[ABC](?=[1-9]\d{0,3}[kKM](?![A-Za-z0-9-]))/;
const LONGEST_TAPERED = 8;

/** A word with its inner dots ("W.V."), or a code of letters and digits. */
function wordAt(text: string, at: number): Token {
  let end = lettersEnd(text, at + 1);
  if (isTimes(text, at) && isDigit(text, at - 1)) return named("word", text[at]!, "x", at);
  if (isDigit(text, end))
    return TAPERED.test(text.slice(at, at + LONGEST_TAPERED))
      ? named("word", text[at]!, text[at]!.toLowerCase(), at)
      : codeAt(text, at, alnumEnd(text, at));
  const simple = end;
  while (end - at <= 12 && text[end] === "." && isAbbreviation(text, at, end)) end = lettersEnd(text, end + 1);
  const own = text.slice(at, end);
  const key = own.toLowerCase();
  return named("word", own, end > simple ? key.replaceAll(".", "") : key, at);
}

/** "W.V" goes on after a dot when single letters stand on both sides: "A.C.", "d.c.w.v.". */
function isAbbreviation(text: string, at: number, dot: number): boolean {
  const before = text.lastIndexOf(".", dot - 1);
  const isSingle = dot - Math.max(before + 1, at) === 1;
  return isSingle && isLetter(text, dot + 1) && !isLetter(text, dot + 2) && !isDigit(text, dot + 2);
}
