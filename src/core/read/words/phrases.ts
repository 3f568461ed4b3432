import type { Phrase } from "./lexeme.js";
import type { Token } from "./token.js";
import { type Field, VOCABULARY } from "./vocabulary.js";

/** A phrase of the vocabulary met in a text: tokens `from` up to but not including `to`. */
export type Meaning = { readonly field: Field; readonly value: string; readonly from: number; readonly to: number };

/** The phrases of the vocabulary by their first word, longest first. */
export const PHRASES: ReadonlyMap<string, readonly Phrase[]> = byFirstWord();

function byFirstWord(): Map<string, Phrase[]> {
  const map = new Map<string, Phrase[]>();
  for (const [field, value, phrases] of VOCABULARY)
    for (const text of phrases.split("|")) {
      const keys = text.split(" ");
      const phrase = { field, value, keys };
      map.set(keys[0]!, [...(map.get(keys[0]!) ?? []), phrase]);
    }
  for (const list of map.values()) list.sort((a, b) => b.keys.length - a.keys.length);
  return map;
}

/** Signs that may stand between the words of one phrase: wire-wound, S. I. T., W/W. */
const JOINS = new Set(["-", ".", "–", "/"]);

/** The end of the phrase at a token, or -1 when the words differ. */
function matchEnd(tokens: readonly Token[], at: number, keys: readonly string[]): number {
  let next = at + 1;
  for (let word = 1; word < keys.length; word++) {
    while (next < tokens.length && JOINS.has(tokens[next]!.text)) next++;
    if (tokens[next]?.key !== keys[word]) return -1;
    next++;
  }
  return next;
}

/** Adds all that the longest phrase at a token means (one phrase may say two things), and gives where the next may start. */
function takePhrase(tokens: readonly Token[], at: number, found: Meaning[]): number {
  let [length, end] = [0, at + 1];
  for (const { field, value, keys } of tokens[at]!.lexeme.phrases) {
    if (keys.length < length) break;
    const to = matchEnd(tokens, at, keys);
    if (to < 0) continue;
    [length, end] = [keys.length, Math.max(to, end)];
    found.push({ field, value, from: at, to });
  }
  return end;
}

/** The phrases of the vocabulary in a text, longest first at each word, in the order they stand. */
export function phrasesOf(tokens: readonly Token[]): Meaning[] {
  const found: Meaning[] = [];
  let at = 0;
  while (at < tokens.length) at = takePhrase(tokens, at, found);
  return found;
}
