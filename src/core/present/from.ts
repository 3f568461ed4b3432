import type { Fact, From } from "../fact.js";

/** What we wrote into a cell of a row, and how we knew it. */
export type Origin = { readonly head: string; readonly text: string; readonly from: From; readonly at: string };

/** The words of a `from` entry, by where a fact is from; a place such as "line 14" says it by itself. */
const LEAD: Record<From, string> = { line: "line", note: "note", default: "rule", bench: "reading", user: "you" };

const BETWEEN = "; ";

/**
 * The `from` cell of a row: for each cell that we filled, its head, what we wrote, and whence.
 *
 * @example writeFrom([{ head: "watts", text: "0.5", from: "note", at: "note 2" }]) // "watts 0.5 (note 2)"
 */
export function writeFrom(origins: readonly Origin[]): string {
  return origins.map(({ head, text, from, at }) => `${head} ${text} (${placed(from, at)})`).join(BETWEEN);
}

/** A place always starts with its own word: "note 2", "rule carbon_comp". */
function placed(from: From, at: string): string {
  const lead = LEAD[from];
  return at.startsWith(lead) ? at : `${lead} ${at}`.trim();
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
    const rest = head ? entry.slice(head.length + 1) : "";
    const found = /^(.*) \((line|note|rule|reading|you)\b(.*)\)$/.exec(rest);
    if (!head || !found) return [];
    const from = (Object.keys(LEAD) as From[]).find((each) => LEAD[each] === found[2])!;
    const at = from === "default" || from === "user" ? found[3]!.trim() : `${found[2]}${found[3]}`;
    return [{ head, text: found[1]!, from, at }];
  });
}

/**
 * Whose a value is: ours, with its place, where the cell still holds what we wrote; the user's where it differs.
 *
 * @param text What the cell holds now, as text.
 */
export function factOf<T>(value: T, text: string, origin: Origin | undefined): Fact<T> {
  if (origin && origin.text === text) return { value, from: origin.from, at: origin.at };
  return { value, from: "user", at: "typed" };
}
