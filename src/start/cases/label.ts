import { isSaidWord, measureOf, type SaidMeasure, type Statement, unitNamed } from "../../core/index.js";

/**
 * A label without the unit that it may end in: its words, what the unit measures, and what one of it is in base units.
 * `isBare` where it is nothing but a unit or the letter of one.
 */
export type Label = {
  readonly words: readonly string[];
  readonly measure: SaidMeasure | null;
  readonly factor: number;
  readonly isBare: boolean;
};

/** Letters that are units where they end a label; any other letter belongs to its last word. */
const LETTERS = new Set(["V", "v", "A", "W", "F", "K", "k", "Ω"]);
/** Units of labels alone: nobody heads a column with a micromicrofarad as mm. */
const OF_LABELS: Readonly<Record<string, { readonly measure: SaidMeasure; readonly factor: number }>> = {
  mm: { measure: "metre", factor: 1e-3 },
  C: { measure: "celsius", factor: 1 },
  degC: { measure: "celsius", factor: 1 },
  celsius: { measure: "celsius", factor: 1 },
};

/** Words that say what is measured where no unit does. */
const MEASURES: readonly (readonly [words: string, measure: SaidMeasure])[] = [
  ["v vf vp vb vk dv volts voltage vmax", "volt"],
  ["i ik ip ia ib ig amps current currents", "ampere"],
  ["r rg rrev ohms resistance", "ohm"],
  ["c farads capacitance", "farad"],
  ["p w power watts wattage", "watt"],
];

/** What a label that is nothing but a unit is about. */
const BARE: Readonly<Partial<Record<SaidMeasure, string>>> = {
  volt: "rated",
  ampere: "current",
  watt: "rated",
  ohm: "value",
  farad: "value",
  henry: "value",
  ratio: "tolerance",
  hertz: "hertz",
};

/** Volts told as d.c. or a.c. are those of the place; plain ones are printed on the part. */
const SORT_OF_VOLTS = /[ad]c$/i;

/** Letters that stand for what is measured, also where they lean on a word: rgrid, vplate, iload. */
const LEANING = /^([vircp])([a-z]{3,})$/;

const apart = (word: string): readonly string[] => {
  const [, letter, rest] = isSaidWord(word) ? [] : (LEANING.exec(word) ?? []);
  return letter && rest && isSaidWord(rest) ? [letter, rest] : [word];
};

/** The words of a label in small letters: "insToChassis" is "ins to chassis". */
export const wordsOf = (text: string): readonly string[] =>
  (isSaidWord(text.toLowerCase()) ? text.toLowerCase() : text)
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .replace(/([A-Z]+)([A-Z][a-z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z0-9µ+]+/)
    .filter(Boolean)
    .flatMap(apart);

/** The unit that a label's end is; bare prefixes are thousands and millions of ohms. */
function unitOf(text: string): { readonly measure: SaidMeasure; readonly factor: number } | null {
  const own = OF_LABELS[text];
  if (own) return own;
  if (text.length === 1 && !LETTERS.has(text)) return null;
  const unit = unitNamed(text.replace(/_/g, ""));
  if (!unit || /^in$/i.test(text)) return null;
  return { measure: measureOf(unit), factor: unit.factor };
}

/** How plainly a unit begins at a place of a label: behind a stroke, at a capital, in the middle of a word. */
function plainness(key: string, at: number): number {
  if (/[_\s]/.test(key[at - 1]!)) return 0;
  return /[A-ZΩµ]/.test(key[at]!) ? 1 : 2;
}

/**
 * All ways to read a label: without each unit that it may end in, the plainest first, then as words alone.
 *
 * @example labelsOf("peakV")[0] // { words: ["peak"], measure: "volt", factor: 1 }
 */
export function labelsOf(key: string): readonly Label[] {
  const whole = unitOf(key);
  const bare = whole && !SORT_OF_VOLTS.test(key) ? (BARE[whole.measure] ?? null) : null;
  const cuts = Array.from({ length: Math.max(key.length - 1, 0) }, (_, index) => index + 1)
    .flatMap((at) => {
      const unit = unitOf(key.slice(at));
      return unit ? [{ ...unit, words: wordsOf(key.slice(0, at)), rank: plainness(key, at) }] : [];
    })
    .sort((a, b) => a.rank - b.rank);
  const words = wordsOf(key);
  const measure = MEASURES.find(([names]) => names.split(" ").some((name) => words.includes(name)))?.[1] ?? null;
  return [
    ...(whole && bare ? [{ ...whole, words: [bare], isBare: true }] : []),
    ...cuts.filter(({ words: left }) => left.length > 0).map(({ rank: _, ...cut }) => ({ ...cut, isBare: false })),
    { words, measure, factor: 1, isBare: false },
  ];
}

/** Whether a label heads a list of the part's own pieces, which is read row by row. @example isOfPieces("sections") // true */
export const isOfPieces = (key: string): boolean => /^(sections?|elements?|taps?)/i.test(key);

/** What a label says of its numbers, as a statement. */
export const statementOf = ({ words, measure }: Label, numbers: readonly number[]): Statement => ({
  words,
  measure,
  numbers,
  where: "label",
});
