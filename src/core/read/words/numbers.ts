import { amountAt, unitAt } from "./figures.js";
import { spelledAt } from "./spelled.js";
import type { Token } from "./token.js";
import { toleranceAt } from "./tolerances.js";
import type { Amount, PrintedTolerance, Reference } from "./words.js";

type Numbers = { amounts: Amount[]; tolerances: PrintedTolerance[]; ppm: string | null };

/** Amounts, tolerances and a coefficient in parts per million; the number in the name of another part is none of them. */
export function numbersOf(tokens: readonly Token[], references: readonly Reference[]): Numbers {
  const found: Numbers = { amounts: [], tolerances: [], ppm: null };
  let at = 0;
  for (const { from, to } of references) {
    at = takeNumbers(tokens, at, from, found);
    if (at === from) at = to;
  }
  takeNumbers(tokens, at, tokens.length, found);
  return found;
}

function takeNumbers(tokens: readonly Token[], from: number, to: number, found: Numbers): number {
  let at = from;
  while (at < to) at = takeNumber(tokens, at, found);
  return at;
}

/** Takes the tolerance or the amount that starts at a token, and gives where the next may start. */
function takeNumber(tokens: readonly Token[], at: number, found: Numbers): number {
  const { type, lexeme } = tokens[at]!;
  if (type !== "number" && !lexeme.isNumber && lexeme.side === null) return at + 1;
  const tolerance = toleranceAt(tokens, at);
  const isOwn = tolerance !== null && isTolerance(tokens, at, tolerance);
  if (tolerance && tokens[tolerance.to]?.key === "ppm") found.ppm = textOf(tokens, at, tolerance.to + 1);
  else if (isOwn) found.tolerances.push(tolerance);
  if (isOwn) return tolerance.to;
  const amount = amountAt(tokens, at) ?? spelledAmount(tokens, at);
  if (amount) found.amounts.push(amount);
  return amount?.to ?? at + 1;
}

/** A lone minus before a number is a tolerance only beside a plus; "- 4 off" is a dash. */
function isTolerance(tokens: readonly Token[], at: number, tolerance: PrintedTolerance): boolean {
  return !(tokens[at]!.type === "number" && tolerance.absolute);
}

function spelledAmount(tokens: readonly Token[], at: number): Amount | null {
  const spelled = tokens[at]!.lexeme.isNumber ? spelledAt(tokens, at) : null;
  const unit = spelled && unitAt(tokens, spelled.to);
  if (!spelled || !unit) return null;
  const figure = { number: spelled.number, unit: unit.unit, from: at, to: unit.to };
  return { figures: [figure], join: "one", joiner: "", from: at, to: unit.to, aside: null };
}

const textOf = (tokens: readonly Token[], from: number, to: number) =>
  tokens
    .slice(from, to)
    .map((token) => token.text)
    .join("");
