import type { Meaning } from "./phrases.js";
import type { Token } from "./tokens.js";
import type { Amount } from "./words.js";

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
  const allInBrackets = amounts.every((amount) => depth[amount.from]! > 0);
  return amounts.map((amount) => {
    const aside =
      saidBefore(tokens, amount, meanings) ?? saidBehind(tokens, amount, meanings) ?? numberSign(tokens, amount);
    const bracketed = !allInBrackets && depth[amount.from]! > 0 ? "brackets" : null;
    return aside || bracketed ? { ...amount, aside: aside ?? bracketed } : amount;
  });
}

/** How many closed brackets each token stands in; one that is never closed is a slip of the type. */
function bracketDepths(tokens: readonly Token[]): number[] {
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
    const between = tokens.slice(meaning.to, amount.from);
    if (!between.some((token) => BOUNDARIES.has(token.text))) return tokens[meaning.from]!.key;
  }
  return null;
}

/** "525 peak", "62 ohms d.c.", "2 sections", "4 off": the word behind speaks of the amount. */
function saidBehind(tokens: readonly Token[], amount: Amount, meanings: readonly Meaning[]): string | null {
  let next = amount.to;
  while (tokens[next]?.text === "." || tokens[next]?.text === "-") next++;
  if (/^(?:st|nd|rd|th)$/.test(tokens[amount.to]?.key ?? "") && tokens[amount.to]!.start === tokens[amount.to - 1]!.end)
    return "count";
  const measure = amount.figures[0]!.unit?.measure ?? null;
  for (const meaning of meanings) {
    if (meaning.from !== next) continue;
    const key = tokens[meaning.from]!.key;
    if (meaning.field === "aside" && meaning.value !== "next" && (key !== "dc" || measure === "ohm")) return key;
    if (meaning.field === "count" && amount.figures[0]!.unit === null) return "count";
  }
  return null;
}

/** "No. 47", "#47", "type 30": a number that names. */
function numberSign(tokens: readonly Token[], amount: Amount): string | null {
  const before = tokens[amount.from - 1]?.text === "." ? tokens[amount.from - 2] : tokens[amount.from - 1];
  if (amount.figures[0]!.unit !== null || !before) return null;
  return before.text === "#" || /^(?:no|nr|type|item|note|fig|page)$/.test(before.key) ? "name" : null;
}
