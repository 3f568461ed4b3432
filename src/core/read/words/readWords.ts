import { markAsides } from "./asides.js";
import { type DecodedCode, decodeCode } from "./codes.js";
import { coefficientOf } from "./coefficients.js";
import { coloursOf } from "./colours.js";
import { labelsOf } from "./labels.js";
import { numbersOf } from "./numbers.js";
import { type Meaning, phrasesOf } from "./phrases.js";
import { referencesOf } from "./references.js";
import type { Token } from "./token.js";
import { PLAIN_WRITING, tokensOf, type Writing } from "./tokens.js";
import type { PrintedTolerance, Words } from "./words.js";

/**
 * All that a text says in the notation of parts lists: amounts, tolerances, words of kind and make, codes, references.
 *
 * Nothing is decided: "M" keeps its two readings, a bare number has no unit, asides are marked and kept.
 *
 * @param isValue whether the text stands in a column of values, where R47 is a value.
 * @example readWords(".05 mf., 200 volts, paper").amounts.length // 2
 */
export function readWords(text: string, writing: Writing = PLAIN_WRITING, isValue = false): Words {
  const printed = tokensOf(closeGroups(text, isValue), writing);
  const tokens = isValue ? withLeadingR(printed) : printed;
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

const GROUPED = /(?<![\d.,])\d{1,3}(?: \d{3})+(?= ?(?:ohms?\b|Ω|Ω|[pn]F\b|mmf|uuf)|(?<=000)(?![\d.,]))/gi;
const GROUPED_VALUE = /^\d{1,3}(?: \d{3})+$/;

/** Thousands that a blank sets apart, closed up: 50 000 pF. In "8 450 V" the blank parts a value from its volts. */
function closeGroups(text: string, isValue: boolean): string {
  if (!/\d \d{3}/.test(text)) return text;
  if (isValue && GROUPED_VALUE.test(text)) return text.replaceAll(" ", "");
  return text.replace(GROUPED, (group) => group.replaceAll(" ", ""));
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
