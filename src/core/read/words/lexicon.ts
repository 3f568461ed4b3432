import { UNITS, type Unit, unitNamed } from "../../quantity/notation/units.js";
import { COEFFICIENT_WORDS } from "./coefficients.js";
import { DIGITS } from "./colours.js";
import { JOINS } from "./figures.js";
import { MARKS } from "./labels.js";
import type { Lexeme } from "./lexeme.js";
import { PHRASES } from "./phrases.js";
import { NUMBER_WORDS } from "./spelled.js";
import { SIDES } from "./tolerances.js";

/** What a number is, and any word that the trade's tables do not know. */
export const UNKNOWN: Lexeme = lexemeNamed("");

const TABLES = [PHRASES, UNITS, JOINS, SIDES, NUMBER_WORDS, COEFFICIENT_WORDS, DIGITS, MARKS];
const LEXEMES: ReadonlyMap<string, Lexeme> = new Map(
  ["m", ...TABLES.flatMap((table) => [...table.keys()])].map((key) => [key, lexemeNamed(key)]),
);

const CAPITAL_M = lexemeNamed("m", unitNamed("M"));

function lexemeNamed(key: string, unit: Unit | undefined = unitNamed(key)): Lexeme {
  return {
    phrases: PHRASES.get(key) ?? [],
    unit: unit ?? null,
    join: JOINS.get(key) ?? null,
    side: SIDES.get(key) ?? null,
    isNumber: NUMBER_WORDS.has(key),
    isCoefficient: COEFFICIENT_WORDS.has(key),
    digit: DIGITS.get(key) ?? null,
    mark: MARKS.get(key) ?? null,
  };
}

/** What a word or sign can be, by its key; only of a bare M does the printed size count. */
export function lexemeOf(text: string, key: string): Lexeme {
  return text === "M" ? CAPITAL_M : (LEXEMES.get(key) ?? UNKNOWN);
}
