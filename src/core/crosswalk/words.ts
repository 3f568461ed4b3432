import type { Kind, ListedPart } from "../part.js";

/** Words that say nothing of which part it is: kinds, makes, units. */
const COMMON =
  /^(?:capacitor|condenser|resistor|coil|choke|transformer|trans|tube|valve|lamp|switch|fuse|paper|mica|ceramic|disc|electrolytic|elect|molded|fixed|variable|carbon|composition|wirewound|wire|wound|ohms?|mfd|mmfd?|volts?|watts?|part|same|with|and|the|for|meg|can)$/;

/** Words of two ways to say one thing (common practice), as the one we count by. */
const SAME_WORD: Readonly<Record<string, string>> = {
  aerial: "antenna",
  anode: "plate",
  mains: "power",
  smoothing: "filter",
  gang: "tuning",
  ganged: "tuning",
  dial: "pilot",
  loudspeaker: "speaker",
  wave: "band",
  gain: "volume",
  earth: "ground",
};

/** The telling words of a part as both lists print it: uses, type numbers, frequencies; without names and order numbers. */
export function wordsOf(part: ListedPart): readonly string[] {
  const names = new Set([...part.designators, part.sameAs, part.partOf].map((name) => name?.toLowerCase()));
  const text = `${part.printed} ${part.use ?? ""}`.replace(part.stockNumber ?? "\0", " ").toLowerCase();
  const joined = text.replace(/\b([a-z])[.-](?:([a-z])\b\.?)/g, "$1$2");
  const found = joined.match(/[a-z\d]+(?:\.\d+)?/g) ?? [];
  const telling = found.filter((word) => word.length > 1 && !COMMON.test(word) && !names.has(word));
  return [...new Set(telling.map((word) => SAME_WORD[word] ?? word))];
}

/** Whether two words are the same or one is the other's abbreviation (trans, transformer). */
const alike = (a: string, b: string) =>
  a === b || (/^[a-z]{3,}$/.test(a) && /^[a-z]{3,}$/.test(b) && (a.startsWith(b) || b.startsWith(a)));

/** The words that two parts share, each as either prints it. */
export const sharedWords = (a: readonly string[], b: readonly string[]): readonly (readonly [string, string])[] =>
  a.flatMap((word) => {
    const match = b.find((other) => alike(word, other));
    return match === undefined ? [] : [[word, match] as const];
  });

/** How telling each word is among parts of one kind: rare ones are worth more. */
export function worth(all: readonly { readonly part: ListedPart; readonly words: readonly string[] }[]): Worth {
  const counts = new Map<string, number>();
  const key = (kind: Kind, word: string) => `${kind} ${word}`;
  for (const { part, words } of all)
    for (const word of words) counts.set(key(part.kind, word), (counts.get(key(part.kind, word)) ?? 0) + 1);
  return (kind, word) => MOST / Math.max(1, (counts.get(key(kind, word)) ?? 1) - 1);
}

/** A word that only one part of a kind in each list has is worth this many points. */
const MOST = 2.5;

/** The points of a word said of parts of a kind. */
export type Worth = (kind: Kind, word: string) => number;
