import { readWords } from "../words/readWords.js";
import type { Figure } from "../words/words.js";

const MARK = /^(?:(?:["″“”'`´,]{1,2}|''|do|dto|ditto|idem|desgl|[↑↓⇑⇓]|-\s?["″]\s?-|-\s?do\.?\s?-)\.?(?:\s+|$))+$/i;

/** Whether a cell only says "as above": a ditto mark, "do.", "dto.", an arrow. A dash does so where a note says it. */
export function isDitto(text: string, dashRepeats: boolean): boolean {
  return MARK.test(text.trim()) || (dashRepeats && /^[-–—]$/.test(text.trim()));
}

const LEADING = /^(?:do|dto|ditto)(?:\.?\s*,\s*|\.?\s+)(?=\S)/i;
const LEADING_MARKS = /^(?:["″“”]\s*)+/;

const TRAILING = /(?<=\S)(?:[\s,]+(?:do|ditto)\.?|(?:\s+["″“”])+)$/i;

/**
 * A text that repeats part of the one above: "do., 47,000 ohms" takes the statements before the first one that it
 * replaces; each of the marks in `" " " .0015 mf.` takes one word; "68K  do." takes all that it does not say anew.
 */
export function withWordsAbove(text: string, above: string): string | null {
  const word = LEADING.exec(text);
  if (word) return repeated(above, text.slice(word[0].length));
  const end = TRAILING.exec(text);
  if (end && !LEADING_MARKS.test(text)) return goneOn(text.slice(0, end.index), above);
  const marks = LEADING_MARKS.exec(text);
  if (!marks || marks[0].length === text.length) return null;
  const count = (marks[0].match(/["″“”]/g) ?? []).length;
  return `${above.split(/\s+/).slice(0, count).join(" ")} ${text.slice(marks[0].length)}`;
}

/** "Resistor, 1 watt, 4.7 meg, 20%" under "do., 2.2 meg": all before the first statement of a measure that is said anew. */
function repeated(above: string, text: string): string {
  const statements = above.split(/,\s+/);
  if (statements.length === 1) return goneOn(text, above);
  const anew = measuresIn(text);
  const end = statements.findIndex((own) => [...measuresIn(own)].some((measure) => anew.has(measure)));
  return [...statements.slice(0, end < 0 ? statements.length : Math.max(1, end)), text].join(", ");
}

/** "68K  do." under "47K, 1/2W, 10%": all of the text above but the measures that are said anew. */
function goneOn(text: string, above: string): string {
  const anew = measuresIn(text);
  const { amounts, tolerances, tokens } = readWords(above);
  const said = amounts.filter(({ figures }) => anew.has(measureOf(figures[0]!)));
  const spans = anew.has("tolerance") ? [...said, ...tolerances].sort((a, b) => a.from - b.from) : said;
  let left = "";
  let end = 0;
  for (const { from, to } of spans) {
    left += above.slice(end, tokens[from]!.start);
    end = tokens[to - 1]!.end;
  }
  return `${text} ${left}${above.slice(end)}`;
}

/** What a text states: a value, watts, volts, a tolerance. */
function measuresIn(text: string): Set<string> {
  const { amounts, tolerances } = readWords(text);
  const named = amounts.map(({ figures }) => measureOf(figures[0]!));
  return new Set(tolerances.length > 0 ? [...named, "tolerance"] : named);
}

function measureOf({ unit }: Figure): string {
  const measure = unit?.measure ?? "value";
  return VALUES.has(measure) ? "value" : measure;
}

const VALUES: ReadonlySet<string> = new Set(["ohm", "farad", "henry"]);
