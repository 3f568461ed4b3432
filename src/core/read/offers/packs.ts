import { fold } from "./fold.js";
import { countsInFigures } from "./prices.js";
import { remembering, shapeOf } from "./remember.js";

const HOLDER =
  "(?:packs?|packets?|packages?|pkgs?\\.?|pk\\.?|bags?|box(?:es)?|sachets?|boites?|paquets?|pochettes?|zakjes?|doos(?:je)?s?|pakjes?|verpakking|beutel|tute|packung|pack(?:chen)?|schachtel)";
const LOOSE_HOLDER = "(?:lots?|sets?|strips?|tubes?|cards?|bundles?|jeux?|bunde?l)";
const PIECES = "(?:pcs?\\.?|pieces?|pces?|st\\.?|stk\\.?|stuks?|stuck|off)";

/** Words before a count that make it the least to be ordered, or where a price begins. */
const LEAST =
  "\\b(?:min\\.?|minimum|minimaal|mindest\\w*|at least|moins|minstens|multiples? (?:of|de|van)|veelvoud van|ab|vanaf|from|des)\\s*";

const PATTERNS: readonly RegExp[] = [
  /\bv\.?p?\.?e\.?\s*(?:zu|a|:|=|von)?\s*(\d{1,4})\b(?!\s*(?:w|v|ohms?|k|m)\b)/,
  new RegExp(`\\b${HOLDER}\\s*(?:of|de|van|a|mit|zu|met|with|\\/|=|:)?\\s*(\\d{1,4})\\b(?!\\s*(?:w|v|ohms?|k|m)\\b)`),
  new RegExp(`\\b${LOOSE_HOLDER}\\s*(?:of|de|van|von|a)\\s*(\\d{1,4})\\b`),
  new RegExp(`\\b(\\d{1,4})\\s*(?:/|per|par|pro|je|-|x)?\\s*${HOLDER}\\b`),
  new RegExp(`(?<![\\d.,/])(?<!${LEAST})(\\d{1,4})\\s*${PIECES}(?![a-z])`),
  /\b(\d{1,3})\s+for\b(?!\s*[$€£\d])/,
  /\b(\d{1,3})er[- ]?(?:pack|set|beutel|packung)/,
  /\bper (\d{1,4}) (?:verpakt|stuks)/,
];

/** A pack of pieces that a text speaks of, and the text without those words, so that its count rates nothing. */
export type FoundPack = { readonly pack: number | null; readonly rest: string };

/**
 * How many pieces one sales unit has, as a description says it: "pkg of 10", "10 pcs.", "five for", "zakje van 10".
 *
 * @example packIn("Metal oxide 68K 3W 5% - five for").pack // 5
 */
export function packIn(text: string): FoundPack {
  const { pattern } = patternFor(shapeOf(text));
  if (!pattern) return { pack: null, rest: text };
  const words = countsInFigures(fold(text));
  const found = pattern.exec(words);
  const count = Number(found?.[1]);
  if (!found || !(count > 0)) return { pack: null, rest: text };
  const isAligned = words.length === text.length;
  return { pack: count, rest: isAligned ? blanked(text, found.index, found[0].length) : words.replace(found[0], " ") };
}

/** The first writing of a pack that a text of this shape has, if any. */
const patternFor = remembering((shape) => {
  const words = countsInFigures(fold(shape));
  return { pattern: PATTERNS.find((pattern) => pattern.test(words)) };
});

/** The count of a packing cell: "sachet 10", "Pack of 5", "10"; tapes and reels are packed, but sold by the piece. */
export function packOfCell(cell: string): number | null {
  const words = fold(cell);
  if (/\breel|tape|\btray|gurt|bande|bulk|loose|\blos\b|vrac/.test(words)) return null;
  const bare = /^(?:per|par|a|je)?\s*(\d{1,4})$/.exec(words)?.[1];
  return bare ? Number(bare) : packIn(cell).pack;
}

const blanked = (text: string, at: number, length: number) =>
  text.slice(0, at) + " ".repeat(length) + text.slice(at + length);
