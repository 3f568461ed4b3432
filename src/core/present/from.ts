import type { Fact, From, Sure } from "../fact.js";

/** What we wrote into a cell of a row, and how we knew it. */
export type Origin = {
  readonly head: string;
  readonly text: string;
  readonly from: From;
  readonly at: string;
  readonly sure?: Sure;
};

/** The word that an entry's place starts with, by where a fact is from; "line 14" says it by itself. */
const LEAD: Record<From, string> = { line: "line", note: "note", default: "rule", bench: "reading", user: "you" };
const PLACE = /^(.*) \((line|note|rule|reading|you)\b(.*?)(?:, (sure|likely|a guess))?\)$/;

const BETWEEN = "; ";

/**
 * The `from` cell of a row: for each cell that we filled, its head, what we wrote, and whence.
 *
 * @example writeFrom([{ head: "watts", text: "0.5", from: "note", at: "note 2" }]) // "watts 0.5 (note 2)"
 */
export function writeFrom(origins: readonly Origin[]): string {
  return origins.map(({ head, text, from, at, sure }) => `${head} ${text} (${placed(from, at, sure)})`).join(BETWEEN);
}

function placed(from: From, at: string, sure: Sure | undefined): string {
  const lead = LEAD[from];
  const whole = at.startsWith(lead) ? at : `${lead} ${at}`.trim();
  return whole.replaceAll(BETWEEN, ", ") + (sure ? `, ${sure}` : "");
}

/** Longer texts than this are kept by their print. */
const LONGEST = 60;

/**
 * What an entry keeps of a cell's text: the text, or its length and a print where it is long or would break the entry up.
 *
 * A print tells an edited cell from ours; it guards against nothing else.
 *
 * @example originText("470 k") // "470 k"
 */
export function originText(text: string): string {
  if (text.length <= LONGEST && !text.includes(BETWEEN) && !/[()]/.test(text)) return text;
  const sum = [...text].reduce((all, letter) => (Math.imul(all, 31) + letter.codePointAt(0)!) >>> 0, 0);
  return `${text.length} letters ${sum.toString(36)}`;
}

/**
 * A `from` cell read back.
 *
 * @param heads The heads that may start an entry; anything else in the cell is passed over.
 */
export function readFrom(cell: string | null, heads: readonly string[]): readonly Origin[] {
  const longestFirst = [...heads].sort((a, b) => b.length - a.length);
  return (cell ?? "").split(BETWEEN).flatMap((entry) => {
    const head = longestFirst.find((each) => entry.startsWith(`${each} `));
    const found = PLACE.exec(entry.slice((head ?? "").length + 1));
    if (!head || !found) return [];
    const [, text, lead, rest, sure] = found;
    const from = (Object.keys(LEAD) as From[]).find((each) => LEAD[each] === lead)!;
    const at = from === "default" || from === "user" ? rest!.trim() : `${lead}${rest}`;
    return [{ head, text: text!, from, at, ...(sure ? { sure: sure as Sure } : {}) }];
  });
}

/**
 * Whose a value is: ours, with its place, where the cell still holds what we wrote; the user's where it differs.
 *
 * @param text What the cell holds now, as text.
 */
export function factOf<T>(value: T, text: string, origin: Origin | undefined): Fact<T> {
  if (!origin || origin.text !== text) return { value, from: "user", at: "typed" };
  const { from, at, sure } = origin;
  return sure ? { value, from, at, sure } : { value, from, at };
}
