import type { Cell } from "../../core/index.js";

/** An example taken apart: what is called, with what cells, and what it should give. */
export type Example = {
  readonly id: string;
  readonly formula: string;
  readonly given: unknown[];
  readonly gives: Cell[][];
};

/**
 * Takes an example apart. It is written like a formula in Excel: text in quotes, {1, 2; 3, 4} for two rows of two,
 * nothing between commas for an argument left out; after -> stands the answer, an error as #N/A.
 */
export function readExample(example: string): Example {
  const parts = /^LUG\.([A-Z0-9_]+)\((.*)\) -> (.+)$/.exec(example);
  if (!parts) throw new Error(`Write an example like LUG.NAME(1, "a") -> 2, not ${example}`);
  const [, id = "", args = "", answer = ""] = parts;
  const formula = `=${example.slice(0, example.length - answer.length - " -> ".length)}`;
  return { id, formula, given: args.trim() === "" ? [] : apart(args, ",").map(argument), gives: block(answer) };
}

function argument(text: string): unknown {
  return text === "" ? null : block(text);
}

function block(text: string): Cell[][] {
  if (!text.startsWith("{")) return [[constant(text)]];
  return apart(text.slice(1, -1), ";").map((row) => apart(row, ",").map(constant));
}

function constant(text: string): Cell {
  if (text === "") return null;
  if (text === "TRUE" || text === "FALSE") return text === "TRUE";
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  const number = text.endsWith("%") ? Number(text.slice(0, -1)) / 100 : Number(text);
  return Number.isNaN(number) ? text : number;
}

/** Splits at a mark that stands outside quotes and braces. */
function apart(text: string, mark: string): string[] {
  const pieces = [""];
  let depth = 0;
  let isQuoted = false;
  for (const letter of text) {
    if (letter === '"') isQuoted = !isQuoted;
    if (!isQuoted && letter === "{") depth++;
    if (!isQuoted && letter === "}") depth--;
    if (letter === mark && depth === 0 && !isQuoted) pieces.push("");
    else pieces[pieces.length - 1] += letter;
  }
  return pieces.map((piece) => piece.trim());
}
