import { markAsides } from "./asides.js";
import { decodeCode } from "./codes.js";
import { coloursOf } from "./colours.js";
import { amountAt, unitAt } from "./figures.js";
import { labelsOf } from "./labels.js";
import { type Meaning, phrasesOf } from "./phrases.js";
import { referencesOf } from "./references.js";
import { spelledAt } from "./spelled.js";
import { PLAIN_WRITING, type Token, tokensOf, type Writing } from "./tokens.js";
import { toleranceAt } from "./tolerances.js";
import type { Amount, PrintedTolerance, Words } from "./words.js";

/**
 * All that a text says in the notation of parts lists: amounts, tolerances, words of kind and make, codes, references.
 *
 * Nothing is decided: "M" keeps its two readings, a bare number has no unit, asides are marked and kept.
 *
 * @param isValue whether the text stands in a column of values, where R47 is a value.
 * @example readWords(".05 mf., 200 volts, paper").amounts.length // 2
 */
export function readWords(text: string, writing: Writing = PLAIN_WRITING, isValue = false): Words {
  const tokens = isValue ? withLeadingR(tokensOf(text, writing)) : tokensOf(text, writing);
  const meanings = phrasesOf(tokens);
  const { amounts, tolerances, ppm } = numbersOf(tokens, meanings);
  return {
    text,
    tokens,
    amounts: markAsides(tokens, amounts, meanings),
    tolerances: tolerances.filter((tolerance) => !isMatching(tokens, tolerance, meanings)),
    meanings,
    codes: tokens.flatMap((token) => (token.type === "code" ? (decodeCode(token.text) ?? []) : [])),
    references: referencesOf(tokens, meanings),
    labels: labelsOf(tokens),
    coefficient: ppm ?? coefficientOf(tokens),
    colours: coloursOf(tokens),
  };
}

/** In a column of values a text that begins with R and figures is a value below one ohm (R47), no designator. */
function withLeadingR(tokens: readonly Token[]): Token[] {
  const match = /^R(\d{1,3})$/.exec(tokens[0]?.text ?? "");
  const unit = { measure: "ohm", factor: 1 } as const;
  return tokens.map((token, at) =>
    match && at === 0 ? { ...token, type: "number", value: Number(`.${match[1]}`), unit } : token,
  );
}

type Numbers = { amounts: Amount[]; tolerances: PrintedTolerance[]; ppm: string | null };

function numbersOf(tokens: readonly Token[], meanings: readonly Meaning[]): Numbers {
  const found: Numbers = { amounts: [], tolerances: [], ppm: null };
  const taken = designatorTokens(tokens, meanings);
  let at = 0;
  while (at < tokens.length) {
    const end = taken.get(at);
    if (end !== undefined) {
      at = end;
      continue;
    }
    const tolerance = toleranceAt(tokens, at);
    if (tolerance && tokens[tolerance.to]?.key === "ppm") found.ppm = textOf(tokens, at, tolerance.to + 1);
    else if (tolerance && isTolerance(tokens, at, tolerance)) found.tolerances.push(tolerance);
    const amount =
      tolerance && isTolerance(tokens, at, tolerance) ? null : (amountAt(tokens, at) ?? spelledAmount(tokens, at));
    if (amount) found.amounts.push(amount);
    at = amount?.to ?? (tolerance && isTolerance(tokens, at, tolerance) ? tolerance.to : at + 1);
  }
  return found;
}

/** A lone minus before a number is a tolerance only beside a plus; "- 4 off" is a dash. */
function isTolerance(tokens: readonly Token[], at: number, tolerance: PrintedTolerance): boolean {
  return tolerance.to > at && !(tokens[at]!.type === "number" && tolerance.absolute);
}

/** Tokens of designators named in references: their numbers are no amounts. */
function designatorTokens(tokens: readonly Token[], meanings: readonly Meaning[]): Map<number, number> {
  return new Map(referencesOf(tokens, meanings).map((reference) => [reference.from, reference.to]));
}

function spelledAmount(tokens: readonly Token[], at: number): Amount | null {
  if (tokens[at]!.type !== "word") return null;
  const spelled = spelledAt(tokens, at);
  const unit = spelled && unitAt(tokens, spelled.to);
  if (!spelled || !unit) return null;
  const figure = { number: spelled.number, unit: unit.unit, from: at, to: unit.to };
  return { figures: [figure], join: "one", joiner: "", from: at, to: unit.to, aside: null };
}

const MATCHING = new Set(["matched", "within", "linearity", "match"]);

/** "matched within 1 %", "linearity 0.1%" are no tolerances of the value. */
function isMatching(tokens: readonly Token[], tolerance: PrintedTolerance, meanings: readonly Meaning[]): boolean {
  return meanings.some((meaning) => {
    const last = tokens[meaning.to - 1]!.key;
    return (
      meaning.field === "aside" &&
      MATCHING.has(last) &&
      tolerance.from - meaning.to >= 0 &&
      tolerance.from - meaning.to <= 1
    );
  });
}

const COEFFICIENT = /^(?:NP[0O]|C0[GHJ]|COG|N\d{3,4}|P\d{3}|X[57][RSUVP]|Y5[PTUVEF]|Z5[PTUVEF])$/i;

/** A temperature code: N750, NPO, C0G, X7R; or N 150, NP 0 written apart. In "100n 400V" the n is a unit. */
function coefficientOf(tokens: readonly Token[]): string | null {
  for (const [at, token] of tokens.entries()) {
    const next = tokens[at + 1];
    const isUnit = tokens[at - 1]?.type === "number";
    const apart = !isUnit && next?.type === "number" && /^(?:n|p|np)$/.test(token.key) ? token.text + next.text : null;
    const word = COEFFICIENT.test(token.text) && token.type !== "number" ? token.text : null;
    if (word ?? (apart && COEFFICIENT.test(apart))) return (word ?? apart)!.toUpperCase();
  }
  return null;
}

const textOf = (tokens: readonly Token[], from: number, to: number) =>
  tokens
    .slice(from, to)
    .map((token) => token.text)
    .join("");
