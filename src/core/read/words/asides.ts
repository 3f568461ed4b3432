import type { Meaning } from "./phrases.js";
import { type Token, touches } from "./token.js";
import type { Amount } from "./words.js";

const ORDINALS = new Set(["st", "nd", "rd", "th"]);
const NAMING = new Set(["#", "no", "nr", "type", "item", "note", "fig", "page"]);
const LONGEST_LETTERS = 2;
const BOUNDARIES = new Set([",", ";", ")", "("]);

/**
 * Amounts that are not the part's own ratings marked as such: taps, matching limits, peaks, test volts, counts of
 * sections or turns, what stands in brackets, what an earlier set had.
 */
export function markAsides(
  tokens: readonly Token[],
  amounts: readonly Amount[],
  meanings: readonly Meaning[],
): Amount[] {
  const depth = bracketDepths(tokens);
  const allInBrackets = amounts.every((amount) => isInBrackets(depth, amount));
  const said = meanings.filter(({ field }) => field === "aside" || field === "count");
  return amounts.map((amount) => {
    const aside = saidBefore(tokens, amount, said) ?? saidBehind(tokens, amount, said) ?? numberSign(tokens, amount);
    const bracketed = !allInBrackets && isInBrackets(depth, amount) ? "brackets" : null;
    return aside || bracketed ? { ...amount, aside: aside ?? bracketed } : amount;
  });
}

const isInBrackets = (depths: readonly number[], amount: Amount) => (depths[amount.from] ?? 0) > 0;

/** How many closed brackets each token stands in (none: an empty list); one that is never closed is a slip of the type. */
function bracketDepths(tokens: readonly Token[]): number[] {
  if (!tokens.some((token) => token.text === ")")) return [];
  const depths = tokens.map(() => 0);
  const open: number[] = [];
  tokens.forEach((token, at) => {
    if (token.text === "(") open.push(at);
    const from = token.text === ")" ? open.pop() : undefined;
    if (from !== undefined) for (let inside = from; inside <= at; inside++) depths[inside]!++;
  });
  return depths;
}

/** "tapped at", "within", "was" and the like speak of the amounts up to the next comma or bracket. */
function saidBefore(tokens: readonly Token[], amount: Amount, meanings: readonly Meaning[]): string | null {
  for (const meaning of meanings) {
    if (meaning.field !== "aside" || meaning.value === "previous" || meaning.to > amount.from) continue;
    const isSerial = tokens[meaning.from]!.key === "serial" && amount.figures[0]!.unit !== null;
    if (isSerial) continue;
    const between = tokens.slice(meaning.to, amount.from);
    if (!between.some((token) => BOUNDARIES.has(token.text))) return tokens[meaning.from]!.key;
  }
  return null;
}

/** "525 peak", "62 ohms d.c.", "2 sections", "4 off": the word behind speaks of the amount. */
function saidBehind(tokens: readonly Token[], amount: Amount, meanings: readonly Meaning[]): string | null {
  let next = amount.to;
  if (next === tokens.length) return null;
  if (touches(tokens[next - 1], tokens[next]) && ORDINALS.has(tokens[next]!.key)) return "count";
  while (tokens[next]?.text === "." || tokens[next]?.text === "-") next++;
  const measure = amount.figures[0]!.unit?.measure ?? null;
  for (const meaning of meanings) {
    if (meaning.from !== next) continue;
    const key = tokens[meaning.from]!.key;
    if (meaning.field === "aside" && meaning.value !== "next" && (key !== "dc" || measure === "ohm")) return key;
    const isEachSection = key === "each" && tokens[meaning.to]?.type === "word";
    if (meaning.field === "count" && amount.figures[0]!.unit === null && !isEachSection) return "count";
  }
  return null;
}

/** "No. 47", "#47", "type 30": a number that names. */
function numberSign(tokens: readonly Token[], amount: Amount): string | null {
  if (amount.figures[0]!.unit !== null) return null;
  let before = amount.from - 1;
  if (before > 0 && tokens[before]!.text === ".") before--;
  if (before >= 0 && NAMING.has(tokens[before]!.key)) return "name";
  return isBehindLetters(tokens, amount.from) ? "name" : null;
}

/** "K-1", "AB-12": letters with a hyphen make a name of the number. */
function isBehindLetters(tokens: readonly Token[], at: number): boolean {
  const [letters, hyphen] = [tokens[at - 2], tokens[at - 1]];
  const isName = letters?.type === "word" && letters.text.length <= LONGEST_LETTERS && /^[A-Z]+$/.test(letters.text);
  return isName && hyphen?.text === "-" && touches(letters, hyphen) && touches(hyphen, tokens[at]);
}
