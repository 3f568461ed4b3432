const MARK = /^(?:["″“”'`´,]{1,2}|''|do|dto|ditto|idem|desgl|[↑↓⇑⇓]|-\s?["″]\s?-|-\s?do\.?\s?-)\.?$/i;

/** Whether a cell only says "as above": a ditto mark, "do.", "dto.", an arrow. A dash does so where a note says it. */
export function isDitto(text: string, dashRepeats: boolean): boolean {
  return MARK.test(text.trim()) || (dashRepeats && /^[-–—]$/.test(text.trim()));
}

const LEADING = /^(?:do|dto|ditto)\.?\s*,\s*/i;
const LEADING_MARKS = /^(?:["″“”]\s*)+/;

/**
 * A text whose beginning repeats the one above: "do., 47,000 ohms" takes the words before the first comma; each of the
 * marks in `" " " .0015 mf.` takes one word.
 */
export function withWordsAbove(text: string, above: string): string | null {
  const word = LEADING.exec(text);
  if (word) return `${above.split(",")[0]!.trim()}, ${text.slice(word[0].length)}`;
  const marks = LEADING_MARKS.exec(text);
  if (!marks || marks[0].length === text.length) return null;
  const count = (marks[0].match(/["″“”]/g) ?? []).length;
  return `${above.split(/\s+/).slice(0, count).join(" ")} ${text.slice(marks[0].length)}`;
}
