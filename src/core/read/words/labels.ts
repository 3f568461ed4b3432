import type { Token } from "./token.js";
import type { Labelled } from "./words.js";

/** Marks stamped beside the lugs of cans, and their names. */
export const MARKS: ReadonlyMap<string, string> = new Map(Object.entries({
  "◗": "half-moon", "◖": "half-moon", "■": "square", "□": "square", "▲": "triangle", "△": "triangle", "●": "circle", "○": "circle",
  "—": "plain", half: "half-moon", square: "square", triangle: "triangle", plain: "plain", semicircle: "half-moon",
})); // biome-ignore format: a table
const BETWEEN = new Set([
  "-",
  "–",
  ",",
  ":",
  "=",
  ".",
  ")",
  "moon",
  "circle",
  "half",
  "square",
  "triangle",
  "plain",
  "section",
]);

const [FIRST_LETTER, LAST_LETTER] = [65, 70];

function isLetter({ type, text }: Token): boolean {
  const code = text.charCodeAt(0);
  return type === "word" && text.length === 1 && code >= FIRST_LETTER && code <= LAST_LETTER;
}

/** A dash alone may be any dash. */
const isMark = ({ lexeme, text }: Token) => lexeme.mark !== null && text !== "—";

/** Whether nothing but filling and marks stands between a label and a number. */
function numberFollows(tokens: readonly Token[], at: number): boolean {
  let next = at + 1;
  while (next < tokens.length && (BETWEEN.has(tokens[next]!.key) || tokens[next]!.lexeme.mark !== null)) next++;
  return tokens[next]?.type === "number";
}

/**
 * The sections of a can by their printed letters (A - 80 MFD; B - 40 MFD), else by their marks (half-moon, square ...).
 *
 * One label alone is no can: at least two are needed, letters in order from A.
 */
export function labelsOf(tokens: readonly Token[]): Labelled[] {
  const letters: number[] = [];
  const marks: number[] = [];
  const stamped: number[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const starts = isLetter(tokens[at]!) ? letters : isMark(tokens[at]!) ? marks : null;
    if (starts === marks) stamped.push(at);
    if (starts && numberFollows(tokens, at)) starts.push(at);
  }
  if (stamped.length > 1 && !numberFollows(tokens, stamped.at(-1)!)) return labelsBehind(tokens, stamped);
  const inOrder = letters.length > 1 && letters.every((at, i) => tokens[at]!.text.charCodeAt(0) === FIRST_LETTER + i);
  const at = inOrder ? letters : marks;
  if (at.length < 2) return [];
  return at.map((from, i) => ({
    label: inOrder ? tokens[from]!.text : tokens[from]!.lexeme.mark!,
    from,
    to: at[i + 1] ?? tokens.length,
  }));
}

/** "80 mfd 500 v (■), 40 mfd 475 v (▲)": each mark stands behind its section. */
const labelsBehind = (tokens: readonly Token[], marks: readonly number[]): Labelled[] =>
  marks.map((to, i) => ({ label: tokens[to]!.lexeme.mark!, from: marks[i - 1] ?? 0, to }));
