import type { Token } from "./tokens.js";
import { type Field, VOCABULARY } from "./vocabulary.js";

/** A phrase of the vocabulary met in a text: tokens `from` up to but not including `to`. */
export type Meaning = { readonly field: Field; readonly value: string; readonly from: number; readonly to: number };

type Phrase = { readonly field: Field; readonly value: string; readonly keys: readonly string[] };

const PHRASES: ReadonlyMap<string, readonly Phrase[]> = byFirstWord();

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

/** Signs that may stand between the words of one phrase: wire-wound, S. I. T. */
const JOINS = new Set(["-", ".", "–"]);

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

/** All that the longest phrase at a token means; one phrase may say two things. */
function meaningsAt(tokens: readonly Token[], at: number): Meaning[] {
  const found: Meaning[] = [];
  let length = 0;
  for (const { field, value, keys } of PHRASES.get(tokens[at]!.key) ?? []) {
    if (keys.length < length) break;
    const to = matchEnd(tokens, at, keys);
    if (to < 0) continue;
    length = keys.length;
    found.push({ field, value, from: at, to });
  }
  return found;
}

/** The phrases of the vocabulary in a text, longest first at each word, in the order they stand. */
export function phrasesOf(tokens: readonly Token[]): Meaning[] {
  const found: Meaning[] = [];
  let at = 0;
  while (at < tokens.length) {
    const type = tokens[at]!.type;
    const here = type === "word" || type === "code" ? meaningsAt(tokens, at) : [];
    found.push(...here);
    at = here.length > 0 ? Math.max(...here.map((meaning) => meaning.to)) : at + 1;
  }
  return found;
}
