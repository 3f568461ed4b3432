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

const isDigit = (code: number) => code >= 48 && code <= 57;
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
  const vulgar = VULGAR[text[at] ?? ""];
  if (vulgar !== undefined) return { value: vulgar, end: at + 1, fraction: true };
  const whole = digitsEnd(text, at);
  if (whole > at) return scanAfterWhole(text, at, whole, mark);
  const end = digitsEnd(text, at + 1);
  if (text[at] !== "." || end === at + 1) return null;
  return plain(Number(`0.${text.slice(at + 1, end)}`), end);
}

function scanAfterWhole(text: string, at: number, whole: number, mark: DecimalMark): ScannedNumber {
  const next = text[whole] ?? "";
  const vulgar = VULGAR[next];
  if (vulgar !== undefined) return { value: Number(text.slice(at, whole)) + vulgar, end: whole + 1, fraction: true };
  const after = digitsEnd(text, whole + 1);
  if (after > whole + 1 && next === "/") return scanFraction(text, at, whole, after);
  if (after > whole + 1 && (next === "." || next === ",")) return scanMarked(text, at, whole, mark);
  return plain(Number(text.slice(at, whole)), whole);
}

const DENOMINATORS = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 32, 64]);

/** A fraction is in its lowest terms and below one; 8/16 and 40/20 are two numbers with a stroke. */
function scanFraction(text: string, at: number, slash: number, end: number): ScannedNumber {
  const [over, under] = [Number(text.slice(at, slash)), Number(text.slice(slash + 1, end))];
  const isFraction = over > 0 && over < under && DENOMINATORS.has(under) && gcd(over, under) === 1 && text[end] !== "/";
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
  const digits = text.slice(at, point).replaceAll(groupMark, "");
  if (after <= point + 1) return plain(Number(digits), point);
  return plain(Number(`${digits}.${text.slice(point + 1, after)}`), after);
}
