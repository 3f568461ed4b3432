import { powerOfTen } from "../powersOfTen.js";

/** A number met in a text: what it says and where it ends; `fraction` tells 1/2 and ½ from .5. */
export type ScannedNumber = { readonly value: number; readonly end: number; readonly fraction: boolean };

/** Whether a comma is a document's decimal mark (and a dot groups thousands), or the other way about. */
export type DecimalMark = "point" | "comma";

const VULGAR: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅕": 1 / 5,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅒": 1 / 10,
};

const VULGAR_FROM = 0xbc;

/** The value of a one-character fraction, if one stands at `at`. */
function vulgarAt(text: string, at: number): number | undefined {
  return text.charCodeAt(at) >= VULGAR_FROM ? VULGAR[text[at]!] : undefined;
}

const [ZERO, NINE] = [48, 57];
const isDigit = (code: number) => code >= ZERO && code <= NINE;
const plain = (value: number, end: number): ScannedNumber => ({ value, end, fraction: false });

/** Where the run of digits that starts at `at` ends. */
export function digitsEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end++;
  return end;
}

/**
 * The number that starts exactly at `at`, or null: 470, .05, 0.05, 470,000, 4,7, 1/2, ½, 1½.
 *
 * The thousands mark stands before groups of three digits, except after a lone 0 (0,047); any other mark between digits
 * is a decimal one, whichever it is. A sign is not part of a number. "1 1/2" is two numbers here.
 */
export function scanNumber(text: string, at: number, mark: DecimalMark = "point"): ScannedNumber | null {
  const vulgar = vulgarAt(text, at);
  if (vulgar !== undefined) return { value: vulgar, end: at + 1, fraction: true };
  const whole = digitsEnd(text, at);
  if (whole > at) return scanAfterWhole(text, at, whole, mark);
  if (text[at] !== ".") return null;
  const end = digitsEnd(text, at + 1);
  return end === at + 1 ? null : plain(decimal(text, at, at, end), end);
}

function scanAfterWhole(text: string, at: number, whole: number, mark: DecimalMark): ScannedNumber {
  const next = text[whole] ?? "";
  const vulgar = vulgarAt(text, whole);
  if (vulgar !== undefined) return { value: decimal(text, at, whole, whole) + vulgar, end: whole + 1, fraction: true };
  const after = digitsEnd(text, whole + 1);
  if (after > whole + 1 && next === "/") return scanFraction(text, at, whole, after);
  if (after > whole + 1 && (next === "." || next === ",")) return scanMarked(text, at, whole, mark);
  return plain(decimal(text, at, whole, whole), whole);
}

const MOST_EXACT_DIGITS = 15;

/**
 * The number whose digits stand from `at` to `end`, with its mark at `point` (`end` if it has none); other marks are passed over.
 *
 * Up to 15 digits one exact whole number is divided once by an exact power of ten, which rounds as `Number` does.
 */
function decimal(text: string, at: number, point: number, end: number): number {
  let [whole, digits] = [0, 0];
  for (let next = at; next < end; next++) {
    const code = text.charCodeAt(next);
    if (!isDigit(code)) continue;
    whole = whole * 10 + code - ZERO;
    digits++;
  }
  if (digits > MOST_EXACT_DIGITS)
    return Number(`${text.slice(at, point).replace(/\D/g, "")}.${text.slice(point + 1, end)}`);
  return point < end ? whole / powerOfTen(end - point - 1) : whole;
}

const DENOMINATORS = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 32, 64]);

/** A fraction of a watt may have any denominator: 1/25 W of a neon lamp. */
const WATT = /^ ?w/i;

/** A fraction is in its lowest terms and below one; 8/16 and 40/20 are two numbers with a stroke. */
function scanFraction(text: string, at: number, slash: number, end: number): ScannedNumber {
  const [over, under] = [decimal(text, at, slash, slash), decimal(text, slash + 1, end, end)];
  const isUsual = DENOMINATORS.has(under) || WATT.test(text.slice(end, end + 2));
  const isFraction = over > 0 && over < under && isUsual && gcd(over, under) === 1 && text[end] !== "/";
  return isFraction ? { value: over / under, end, fraction: true } : plain(over, slash);
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

function scanMarked(text: string, at: number, whole: number, mark: DecimalMark): ScannedNumber {
  const groupMark = mark === "point" ? "," : ".";
  let end = whole;
  while (text[end] === groupMark && digitsEnd(text, end + 1) === end + 4) end += 4;
  const isGrouped = end > whole && whole - at <= 3 && text[at] !== "0";
  const point = isGrouped ? end : whole;
  const hasDecimals = text[point] === "." || text[point] === ",";
  const after = hasDecimals ? digitsEnd(text, point + 1) : point;
  return after > point + 1
    ? plain(decimal(text, at, point, after), after)
    : plain(decimal(text, at, point, point), point);
}
