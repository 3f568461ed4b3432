/** A number met in a text: what it says and where it ends. `grouped` tells 470,000 from 470000. */
export type ScannedNumber = {
  readonly value: number;
  readonly end: number;
  readonly grouped: boolean;
  readonly fraction: boolean;
};

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

/** Where the run of digits that starts at `at` ends. */
export function digitsEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end++;
  return end;
}

/**
 * The number that starts exactly at `at`, or null: 470, .05, 0.05, 470,000, 4,7 (decimal comma), 1/2, ½, 1½.
 *
 * A comma before groups of three digits is a thousands mark, except after a lone 0 (0,047); any other comma between
 * digits is a decimal comma. A sign is not part of a number. "1 1/2" is two numbers here: see `scanMixed`.
 */
export function scanNumber(text: string, at: number): ScannedNumber | null {
  const vulgar = VULGAR[text[at] ?? ""];
  if (vulgar !== undefined) return { value: vulgar, end: at + 1, grouped: false, fraction: true };
  const whole = digitsEnd(text, at);
  if (whole > at) return scanAfterWhole(text, at, whole);
  const isPoint = text[at] === "." || (text[at] === "," && !isDigit(text.charCodeAt(at - 1)));
  const end = digitsEnd(text, at + 1);
  if (!isPoint || end === at + 1) return null;
  return { value: Number(`0.${text.slice(at + 1, end)}`), end, grouped: false, fraction: false };
}

function scanAfterWhole(text: string, at: number, whole: number): ScannedNumber {
  const plain = (end: number, value: number, grouped = false) => ({ value, end, grouped, fraction: false });
  const next = text[whole] ?? "";
  const vulgar = VULGAR[next];
  if (vulgar !== undefined)
    return { value: Number(text.slice(at, whole)) + vulgar, end: whole + 1, grouped: false, fraction: true };
  const after = digitsEnd(text, whole + 1);
  if (next === "/" && after > whole + 1) return scanFraction(text, at, whole, after);
  if (next === "." && after > whole + 1) return plain(after, Number(text.slice(at, after)));
  if (next === "." && !/[a-z]/i.test(text[whole + 1] ?? "")) return plain(whole, Number(text.slice(at, whole)));
  if (next === "," && after > whole + 1) return scanComma(text, at, whole, after);
  return plain(whole, Number(text.slice(at, whole)));
}

function scanFraction(text: string, at: number, slash: number, end: number): ScannedNumber {
  const [over, under] = [Number(text.slice(at, slash)), Number(text.slice(slash + 1, end))];
  if (over === 0 || over >= under || under > 100)
    return { value: Number(text.slice(at, slash)), end: slash, grouped: false, fraction: false };
  return { value: over / under, end, grouped: false, fraction: true };
}

function scanComma(text: string, at: number, comma: number, after: number): ScannedNumber {
  let end = comma;
  while (text[end] === "," && digitsEnd(text, end + 1) === end + 4) end += 4;
  const isGrouped = end > comma && comma - at <= 3 && text[at] !== "0";
  if (!isGrouped)
    return {
      value: Number(`${text.slice(at, comma)}.${text.slice(comma + 1, after)}`),
      end: after,
      grouped: false,
      fraction: false,
    };
  const isPoint = text[end] === "." && digitsEnd(text, end + 1) > end + 1;
  const stop = isPoint ? digitsEnd(text, end + 1) : end;
  return { value: Number(text.slice(at, stop).replaceAll(",", "")), end: stop, grouped: true, fraction: false };
}
