import { phrasesOf } from "../words/phrases.js";
import { tokensOf } from "../words/tokens.js";

/** Words that titles, notes and page heads hold, and names of sections do not. */
const NEVER_IN_SECTION =
  /\b(?:parts?|list|notes?|model|page|sheet|issued?|bulletin|manual|instructions?|inc|ltd|co|company|corp|prices?|replacement|schedule|rev|revised|drawn|title|table|errata|additions?|specifications?|warning|caution|description|symbols?|type|serial|service|data|folder|teile|blatt|stückliste)\b|[$%=@]/i;
const FILLER = new Set([
  "and",
  "&",
  "-",
  "–",
  "—",
  ",",
  ".",
  "/",
  ":",
  "etc",
  "miscellaneous",
  "misc",
  "hardware",
  "other",
  "sundries",
  "und",
  "(",
  ")",
  "fixed",
  "value",
  "values",
  "verschiedenes",
  "s",
]);
const CONTINUED = /\s*[([]?\s*\b(?:continued|contd|cont'd|cont|fortsetzung|forts)\b\.?\s*[)\]]?\s*$/i;

/** A line longer than this is no heading. */
const LONGEST_LINE = 90;

/** Whether a heading only takes up an earlier one on a new page. */
export const isContinued = (text: string) => text.length <= LONGEST_LINE && CONTINUED.test(text);

/** What counts the pieces of a list before their names: "Unit: ", "SHEET 1 - ", "Section A: ", "A2 - ", "2. ", "-3- ", "IV) ". */
const ORDINAL =
  /^(?:(?:sub-?assembly|assembly|unit|chassis|section|stage|circuit):|(?:sheet|section|part|group|blatt|teil)\s+(?:\d{1,2}|[A-Z]|[IVX]{1,4})\s*(?:[-–—]{1,2}|[:.])|A\d{1,2}\s*(?:[-–—]{1,2}|:)|-\s?\d{1,2}\s?-|\(?(?:\d{1,2}|[A-H]|[IVX]{1,4})[.)])\s+(?=[A-Z])/i;

/** "A2 - POWER AMPLIFIER": no part A2 but the name of an assembly. */
export const isNumberedHeading = (text: string) =>
  /^A\d/.test(text) && ORDINAL.test(text) && sectionName(text) !== null;

/** Whether a heading stands behind its number with wide blanks between: "SECTION A   --   R-F UNIT". */
export function isSpacedOut(text: string): boolean {
  if (text.length > LONGEST_LINE) return false;
  const number = ORDINAL.exec(text.trim().replace(/\s+/g, " "))?.[0];
  const name = number ? text.trim().replace(/\s+/g, " ").slice(number.length) : "";
  return name !== "" && !/\d/.test(name) && text.includes(name);
}

/** A heading without its number, "(continued)" and marks of Markdown. */
const headingText = (text: string) =>
  text
    .replace(/^[#*=_~–—\s]+|^-+(?!\s?\d)\s*|[*=_~\-–—\s]+$/g, "")
    .replace(ORDINAL, "")
    .replace(/^\((.*)\)$|^\[(.*)\]$/, "$1$2")
    .replace(CONTINUED, "")
    .replace(/\s+/g, " ")
    .trim();

/** "Resistors: 1/2 W unless specified", "Capacitor values in pF": notes on a kind, no headings above its parts. */
const STATES = /^[^(]*:.*\b(?:unless|otherwise|except)\b|\bin\s+(?:[µunp]f|uuf|mmfd?|mfd?|ohms?|Ω)\.?$/i;

/**
 * Whether a line only names a kind of part: RESISTORS; Coils, Chokes and Transformers; MICA CONDENSERS, 500 VOLTS.
 *
 * What stands behind the first comma, dash or bracket may be anything: it states what all parts under it share.
 */
export function isKindHeading(text: string): boolean {
  if (text.length > LONGEST_LINE || STATES.test(text)) return false;
  const plain = headingText(text);
  const head = plain.split(/--|[:;(]|,\s*(?=\d)|\s-\s(?=\d)/)[0]!;
  const tokens = tokensOf(head);
  const meanings = phrasesOf(tokens);
  const named = meanings.filter(
    (meaning) => meaning.field !== "aside" && meaning.field !== "reference" && meaning.field !== "mark",
  );
  const isKnown = (at: number) =>
    FILLER.has(tokens[at]!.key) || named.some((meaning) => meaning.from <= at && at < meaning.to);
  const says = named.some((meaning) => meaning.field === "kind" || isPlural(tokens[meaning.from]!.key));
  const misc =
    tokens.length > 0 &&
    tokens.every((token) => FILLER.has(token.key)) &&
    /misc|hardware|versch|other|sundries/i.test(head);
  return misc || (says && tokens.every((token, at) => token.type !== "number" && isKnown(at)));
}

const isPlural = (key: string) => key.length > 4 && key.endsWith("s");

const LONGEST_NAME = 48;
const MOST_WORDS = 6;

/** The section that a heading names ("MAIN CHASSIS", "TUNER ASSEMBLY (820-T)"), or null when it is no such heading. */
export function sectionName(text: string): string | null {
  if (text.length > LONGEST_LINE || isPageLine(headingText(text)) || STATES.test(text)) return null;
  const plain = headingText(text)
    .replace(/\s*\([^)]*\)\s*$/, "")
    .replace(/[:.]$/, "")
    .replace(/^(\S+\s+\S.*)\s+parts$/i, "$1")
    .trim();
  const abbreviated = headingText(text)
    .replace(/\s*\([^)]*\)\s*$/, "")
    .trim();
  if (plain.length < 3 || plain.length > LONGEST_NAME || NEVER_IN_SECTION.test(plain)) return null;
  if (plain.split(/\s+/).length > MOST_WORDS || /\d/.test(plain.replace(/\b(?:no|nr|#)?\.?\s?\d{1,2}\b/gi, "")))
    return null;
  if (!/^[A-ZÄÖÜ]/.test(plain) || /^[A-Z]{1,3}-\d/.test(plain) || /[,;]$/.test(plain) || /[a-z]\.$/.test(abbreviated))
    return null;
  return plain;
}

const PAGE =
  /\b(?:page|sheet|blatt|seite)\s+(?:\d+|[a-z]+)\b|^[\s\-–—.(]*\d{1,4}[\s\-–—.)]*$|^[IVXLC]+\s*-\s*\d+$|\bcontinued (?:on|overleaf)\b|^leaf\s+\d+$|^\(?\s*(?:over|continued|end of table|concluded)\s*\)?$|\bprinted in\b/i;

const LONGEST_PAGE_LINE = 200;

/** Whether a line only serves the page: its number, "continued on page 22", "(over)". */
export const isPageLine = (text: string) => text.length <= LONGEST_PAGE_LINE && PAGE.test(text.trim());
