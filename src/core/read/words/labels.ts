import type { Token } from "./tokens.js";
import type { Labelled } from "./words.js";

/** Marks stamped beside the lugs of cans, and their names. */
const MARKS: Readonly<Record<string, string>> = {
  "◗": "half-moon", "◖": "half-moon", "■": "square", "□": "square", "▲": "triangle", "△": "triangle", "●": "circle", "○": "circle",
  "—": "plain", half: "half-moon", square: "square", triangle: "triangle", plain: "plain", semicircle: "half-moon",
}; // biome-ignore format: a table
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

const isLetter = (token: Token) => token.type === "word" && /^[A-F]$/.test(token.text);

/** Whether nothing but filling and marks stands between a label and a number. */
function numberFollows(tokens: readonly Token[], at: number): boolean {
  let next = at + 1;
  while (next < tokens.length && (BETWEEN.has(tokens[next]!.key) || tokens[next]!.text in MARKS)) next++;
  return tokens[next]?.type === "number";
}

/**
 * The sections of a can by their printed letters (A - 80 MFD; B - 40 MFD), else by their marks (half-moon, square ...).
 *
 * One label alone is no can: at least two are needed, letters in order from A.
 */
export function labelsOf(tokens: readonly Token[]): Labelled[] {
  const starts = (test: (token: Token) => boolean) =>
    tokens.flatMap((token, at) => (test(token) && numberFollows(tokens, at) ? [at] : []));
  const letters = starts(isLetter);
  const inOrder = letters.length > 1 && letters.every((at, i) => tokens[at]!.text.charCodeAt(0) === 65 + i);
  const at = inOrder ? letters : starts((token) => token.key in MARKS && token.key !== "—");
  if (at.length < 2) return [];
  return at.map((from, i) => ({
    label: inOrder ? tokens[from]!.text : MARKS[tokens[from]!.key]!,
    from,
    to: at[i + 1] ?? tokens.length,
  }));
}
