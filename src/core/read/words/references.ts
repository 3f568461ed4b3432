import type { Meaning } from "./phrases.js";
import type { Token } from "./token.js";
import type { Reference } from "./words.js";

const ONE_DESIGNATOR = /^[A-Za-zÄÖÜäöü]{1,4}\d{1,4}[A-Za-z]?$/;

const WHOLE = /^\d+$/;
/** Letters that may stand apart from the number ("wie R 1"). */
const APART = /^(?:[RCLT]|Tr|Dr|Rö)$/;

/** The one designator that starts at a token (R12, C-01, SP-1) and where it ends, or null. */
function designatorAt(tokens: readonly Token[], at: number): { designator: string; to: number } | null {
  const token = tokens[at];
  if (token?.type === "code" && ONE_DESIGNATOR.test(token.text)) return { designator: token.text, to: at + 1 };
  if (token?.type !== "word" || token.text.length > 4) return null;
  const [next, last] = [tokens[at + 1], tokens[at + 2]];
  if (APART.test(token.text) && next && WHOLE.test(next.text))
    return { designator: token.text + next.text, to: at + 2 };
  const isJoined = next?.text === "-" && token.end === next.start && next.end === last?.start;
  if (!isJoined || !last || !(WHOLE.test(last.text) || ONE_DESIGNATOR.test(last.text))) return null;
  return { designator: `${token.text}-${last.text}`, to: at + 3 };
}

/** Other parts that a text names as the same, or as what the part belongs to. */
export function referencesOf(tokens: readonly Token[], meanings: readonly Meaning[]): Reference[] {
  const found: Reference[] = [];
  const equal = tokens[0]?.text === "=" ? designatorAt(tokens, 1) : null;
  if (equal) found.push({ as: "same", designator: equal.designator, from: 0, to: equal.to });
  for (const { field, value, from, to } of meanings) {
    if (field !== "reference") continue;
    const named = designatorAt(tokens, tokens[to]?.key === "switch" ? to + 1 : to);
    if (named) found.push({ as: value as Reference["as"], designator: named.designator, from, to: named.to });
  }
  return found;
}
