/** Designators read from a text: the names written out one by one, and where they end. */
export type Designators = { readonly names: readonly string[]; readonly end: number };

const NAME =
  /(?:((?:\d{0,2}A\d{1,2})+)(?=[A-Z]{1,3}\d)|([A-Z]|\d{1,2})-(?=[A-Z]{1,3}\d))?([A-ZÄÖÜ][A-Za-zäöü]{0,3})(-|(?<=(?:^|[^A-Za-z])(?:[A-Z]|(?!NO)[A-Z]{2}))\.(?=\d)|)(\d{1,4})(?:(?=ABC?D?E?F?(?![A-Za-z0-9]))|([A-Za-z]?)(?![A-Za-z0-9%µΩ]))/y;
const NUMBER =
  /(-?)(\d{1,4})([A-F]?)(?![A-Za-z0-9.%/µΩ]|,(?:000|\d{3}\s?(?:ohm|Ω))|\s*(?:[kKMmpnuµVWΩHhAa]|meg|ohms?|m?mfd?|[up]f|off|used|hy|henr[yi]|amps?|cycles|[km]c)(?![a-z]))/y;
const SUFFIX = /([A-F])(?![A-Za-z0-9])/y;
const SUFFIXES = /\s?([A-F]{2,6})(?![A-Za-z0-9])/y;
const RANGE = /\s*(?:THRU|thru|Thru|TO|to|through|bis|-|–|—|\.\.\.|…)\s*/y;
const SEPARATOR = /\s*(?:,\s*(?:and|AND|und|&)?|&|\+|;|\/|\band\b|\bAND\b|\bund\b)\s*/y;
const BLANK = /\s+/y;
const EXCEPT = /\s*\(?\s*(?:except|less|without|ohne)\s+([^)]*)\)?/iy;

type Name = {
  readonly prefix: string;
  readonly letters: string;
  readonly hyphen: string;
  readonly digits: string;
  readonly suffix: string;
};

/** A value typed on to a designator: "R3-100,000-ohm", "C7-8-8-8 mfd". */
const FIGURE = /^\d+(?:,\d{3})*(?:[-x]\d+)*[\s-]*(?:ohms?|meg(?:ohms?)?|m?mfd?|[up]f|uuf|watts?|henr(?:y|ies))\b/i;
const LONGEST_FIGURE = 24;
const LONGEST_RANGE = 2000;

/**
 * The designators that stand at `at`, or null: R12, C-10, C12A/B, R1 THRU R12, R18,27,45, A-R193 THRU A-R208, C6 ABCD.
 *
 * Written out as printed, without blanks. A number or letter alone goes on from the name before it.
 */
export function designatorsAt(text: string, at = 0): Designators | null {
  const first = nameAt(text, at);
  if (!first) return null;
  const names: string[] = [];
  let [last, end] = [first.name, first.end];
  for (;;) {
    const range = rangeAt(text, end, last);
    names.push(...(range?.names ?? [spell(last)]));
    end = range?.end ?? end;
    last = range?.last ?? last;
    const suffixes = range ? null : suffixesAt(text, end, last);
    if (suffixes) names.splice(-1, 1, ...suffixes.names);
    end = suffixes?.end ?? end;
    const next = nextAt(text, end, last);
    if (!next) break;
    [last, end] = [next.name, next.end];
  }
  return without(text, names, end);
}

/** Class letters that some lists part from the number by a blank (R 1, Tr 2). */
const APART =
  /(?<![A-Za-z0-9,])(R|C|L|T|Tr|V|Rö|Dr|D|Gl|Gr|Si|La|S|F|Q|K|P|RV|VR|CR|RT|TH|SW|PL) (?=\d{1,3}[A-F]?(?!-\d|[A-Za-z0-9.]))/g;

/** The designators that a whole text consists of, or null when it holds anything else. */
export function designatorsOf(text: string): readonly string[] | null {
  const trimmed = text
    .trim()
    .replace(/[,.:;*†‡§+]+$/, "")
    .replace(APART, "$1");
  const found = designatorsAt(trimmed);
  return found && found.end === trimmed.length ? found.names : null;
}

const COLUMN_NAME =
  /^(?:[A-Z]{1,4}(?:-[A-Z])?|[A-ZÄÖÜ][a-zäöü]|\d{1,2}[A-Z]{1,3}\d{1,3}[A-Z]?|[A-Z]{1,3}\d{1,4}-\d{1,2})$/;
/** The unit's number before both ends of a range: "1R1 thru 1R4". */
const UNIT_RANGE = /^\s*(\d{1,2})[A-Z]{1,3}\d{1,3}\s*(?:thru|to|[-–]).*\b\1[A-Z]/i;
const NO_NAME = /^(?:NOTE|REV|SEE|ALL|THE|FOR|REF|No|Nr)$/;

/** Names that only their column makes plain, or null: letters alone (RX, LS-A, Dr), a unit's number before them (1R1, 2C4), a section's behind (C104-1). */
export function columnNamesOf(text: string): readonly string[] | null {
  const unit = UNIT_RANGE.exec(text)?.[1];
  const plain = unit === undefined ? null : designatorsOf(text.replaceAll(new RegExp(`\\b${unit}(?=[A-Z])`, "g"), ""));
  if (plain) return plain.map((name) => unit + name);
  const names = text.trim().split(/\s*[,;]\s*|\s+/);
  return names.every((name) => COLUMN_NAME.test(name) && !NO_NAME.test(name)) ? names : null;
}

/** Whether a text is a bare number by which a diagram names a part: 14, 27A; only its column makes that plain. */
export const isKeyNumber = (text: string): boolean => /^\d{1,3}[A-Z]?$/.test(text);

function nameAt(text: string, at: number): { name: Name; end: number } | null {
  NAME.lastIndex = at;
  const match = NAME.exec(text);
  if (!match) return null;
  const [all, assembly = "", circuit = "", letters = "", hyphen = "", digits = "", suffix = ""] = match;
  const name = { prefix: assembly || (circuit && `${circuit}-`), letters, hyphen, digits, suffix };
  return hyphen === "-" && !suffix ? hyphened(text, at + all.length, name) : { name, end: at + all.length };
}

const HYPHENED_SUFFIX = /-([A-F])(?![A-Za-z0-9])/y;

/** What goes on behind a second hyphen: R-4-1 is the first of several R-4, no range; C-1-A a section of C-1. */
function hyphened(text: string, at: number, name: Name): { name: Name; end: number } {
  HYPHENED_SUFFIX.lastIndex = at;
  const suffix = HYPHENED_SUFFIX.exec(text);
  if (suffix) return { name: { ...name, suffix: suffix[1]! }, end: at + suffix[0].length };
  NUMBER.lastIndex = at;
  const number = NUMBER.exec(text);
  const isPiece =
    number?.[1] === "-" && Number(number[2]) <= Number(name.digits) && text[at + number[0].length] !== "-";
  if (!isPiece) return { name, end: at };
  return { name: { ...name, digits: name.digits + number[0] }, end: at + number[0].length };
}

const spell = (name: Name) => name.prefix + name.letters + name.hyphen + name.digits + name.suffix;

/** A name that leaves out what it shares with the one before it: R18,27,45; C12A,B,C. */
function shortAt(text: string, at: number, last: Name): { name: Name; end: number } | null {
  NUMBER.lastIndex = at;
  const number = NUMBER.exec(text);
  if (number) {
    const digits = last.digits.replace(/\d+$/, number[2]!);
    return { name: { ...last, digits, suffix: number[3]! }, end: at + number[0].length };
  }
  SUFFIX.lastIndex = at;
  const suffix = SUFFIX.exec(text);
  return suffix && last.suffix ? { name: { ...last, suffix: suffix[1]! }, end: at + suffix[0].length } : null;
}

/** The next name of a list: behind a separator in full or short, behind a blank in full and with the same letters. */
function nextAt(text: string, at: number, last: Name): { name: Name; end: number } | null {
  SEPARATOR.lastIndex = at;
  const separator = SEPARATOR.exec(text);
  const from = at + (separator?.[0].length ?? 0);
  if (separator) return withPrefix(nameAt(text, from), last) ?? shortAt(text, from, last);
  BLANK.lastIndex = at;
  const blank = BLANK.exec(text);
  const found = blank ? nameAt(text, at + blank[0].length) : null;
  return found?.name.letters === last.letters ? found : null;
}

/** "1A1C2,C3": what stands before the first name of a list holds for the next. */
const withPrefix = (found: { name: Name; end: number } | null, { prefix, letters }: Name) =>
  found && found.name.prefix === "" && found.name.letters === letters
    ? { ...found, name: { ...found.name, prefix } }
    : found;

type Range = { readonly names: string[]; readonly last: Name; readonly end: number };

/** The rest of a range: "THRU R12", "-27", "A-D"; by numbers or by letters. */
function rangeAt(text: string, at: number, first: Name): Range | null {
  RANGE.lastIndex = at;
  const joint = RANGE.exec(text);
  if (!joint) return null;
  const to = at + joint[0].length;
  if (FIGURE.test(text.slice(to, to + LONGEST_FIGURE))) return null;
  const found = nameAt(text, to) ?? shortAt(text, to, first);
  if (!found || found.name.letters !== first.letters) return null;
  const names = found.name.digits === first.digits ? byLetter(first, found.name) : byNumber(first, found.name);
  return names && { names, last: found.name, end: found.end };
}

function byNumber(first: Name, last: Name): string[] | null {
  const [from, to] = [Number(first.digits), Number(last.digits)];
  if (!(to > from) || to - from > LONGEST_RANGE) return null;
  const width = first.digits.startsWith("0") ? first.digits.length : 0;
  return Array.from({ length: to - from + 1 }, (_, i) =>
    spell({ ...first, digits: String(from + i).padStart(width, "0") }),
  );
}

function byLetter(first: Name, last: Name): string[] | null {
  const [from, to] = [first.suffix.charCodeAt(0), last.suffix.charCodeAt(0)];
  if (!(to > from)) return null;
  return Array.from({ length: to - from + 1 }, (_, i) => spell({ ...first, suffix: String.fromCharCode(from + i) }));
}

/** "C6 ABCD": letters of a can written together. */
function suffixesAt(text: string, at: number, last: Name): { names: string[]; end: number } | null {
  SUFFIXES.lastIndex = at;
  const match = last.suffix ? null : SUFFIXES.exec(text);
  if (!match || !"ABCDEF".startsWith(match[1]!)) return null;
  return { names: [...match[1]!].map((suffix) => spell({ ...last, suffix })), end: at + match[0].length };
}

/** "R-9 THRU R-12 (except R-11)". */
function without(text: string, names: readonly string[], end: number): Designators {
  EXCEPT.lastIndex = end;
  const match = EXCEPT.exec(text);
  const left = match && designatorsOf(match[1]!);
  return left ? { names: names.filter((name) => !left.includes(name)), end: end + match[0].length } : { names, end };
}
