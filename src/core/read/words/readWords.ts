import { markAsides } from "./asides.js";
import { type DecodedCode, decodeCode } from "./codes.js";
import { coloursOf } from "./colours.js";
import { amountAt, unitAt } from "./figures.js";
import { labelsOf } from "./labels.js";
import { type Meaning, phrasesOf } from "./phrases.js";
import { referencesOf } from "./references.js";
import { spelledAt } from "./spelled.js";
import type { Token } from "./token.js";
import { PLAIN_WRITING, tokensOf, type Writing } from "./tokens.js";
import { toleranceAt } from "./tolerances.js";
import type { Amount, PrintedTolerance, Reference, Words } from "./words.js";

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
  const references = referencesOf(tokens, meanings);
  const { amounts, tolerances, ppm } = numbersOf(tokens, references);
  return {
    text,
    tokens,
    amounts: markAsides(tokens, amounts, meanings),
    tolerances: tolerances.filter((tolerance) => !isMatching(tokens, tolerance, meanings)),
    meanings,
    codes: codesOf(tokens),
    references,
    labels: labelsOf(tokens),
    coefficient: ppm ?? coefficientOf(tokens),
    colours: coloursOf(tokens),
  };
}

/** In a column of values a text that begins with R and figures is a value below one ohm (R47), no designator. */
function withLeadingR(tokens: readonly Token[]): readonly Token[] {
  const [first, ...rest] = tokens;
  if (first?.type !== "code" || !/^R\d{1,3}$/.test(first.text)) return tokens;
  const value = Number(`.${first.text.slice(1)}`);
  return [{ ...first, type: "number", value, unit: { measure: "ohm", factor: 1 } }, ...rest];
}

/** The type designations that can be decoded. */
function codesOf(tokens: readonly Token[]): DecodedCode[] {
  const codes: DecodedCode[] = [];
  for (const { type, text } of tokens) {
    const code = type === "code" ? decodeCode(text) : null;
    if (code) codes.push(code);
  }
  return codes;
}

type Numbers = { amounts: Amount[]; tolerances: PrintedTolerance[]; ppm: string | null };

/** Amounts and tolerances; the numbers of designators that are named as references are neither. */
function numbersOf(tokens: readonly Token[], references: readonly Reference[]): Numbers {
  const found: Numbers = { amounts: [], tolerances: [], ppm: null };
  let at = 0;
  while (at < tokens.length) {
    const reference = references.find(({ from }) => from === at);
    at = reference ? reference.to : takeNumber(tokens, at, found);
  }
  return found;
}

/** Takes the tolerance or the amount that starts at a token, and gives where the next may start. */
function takeNumber(tokens: readonly Token[], at: number, found: Numbers): number {
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
  const { number, scale } = tokens[at]!.lexeme;
  const spelled = number === null && scale === null ? null : spelledAt(tokens, at);
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
const COEFFICIENT_LETTERS = new Set("npcxyz");
const APART = new Set(["n", "p", "np"]);

/** A temperature code: N750, NPO, C0G, X7R; or N 150, NP 0 written apart. In "100n 400V" the n is a unit. */
function coefficientOf(tokens: readonly Token[]): string | null {
  for (let at = 0; at < tokens.length; at++) {
    const { type, text, key } = tokens[at]!;
    if ((type !== "word" && type !== "code") || text.length > 5 || !COEFFICIENT_LETTERS.has(key[0]!)) continue;
    if (COEFFICIENT.test(text)) return text.toUpperCase();
    const next = APART.has(key) ? tokens[at + 1] : undefined;
    const isUnit = at > 0 && tokens[at - 1]!.type === "number";
    if (next?.type === "number" && !isUnit && COEFFICIENT.test(text + next.text))
      return (text + next.text).toUpperCase();
  }
  return null;
}

const textOf = (tokens: readonly Token[], from: number, to: number) =>
  tokens
    .slice(from, to)
    .map((token) => token.text)
    .join("");
