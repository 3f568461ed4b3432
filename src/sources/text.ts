import type { SourceLine } from "../core/index.js";
import { type Delimiter, guessDelimiter, sureDelimiter } from "./delimiter.js";
import { recordsOf } from "./records.js";
import { plainSource, type ReadOptions, type Source } from "./source.js";

const PROGRESS_EVERY = 50_000;

/**
 * Text as lines; with cells where it is a table (CSV, TSV, cells copied from a sheet).
 *
 * In a file that is not named as a table commas and semicolons make columns only where nearly all lines agree: they stand
 * in prose too.
 *
 * @param text Line ends are "\n".
 * @example readText("R1\t470K\nR2\t1M", "pasted").lines[1] // { number: 2, text: "R2\t1M", cells: ["R2", "1M"] }
 */
export function readText(text: string, name: string, onProgress?: ReadOptions["onProgress"]): Source {
  const { form, lines } = linesOfText(text, name);
  const found: SourceLine[] = [];
  for (const { done, line } of lines) {
    found.push(line);
    if (found.length % PROGRESS_EVERY === 0) onProgress?.(done, `row ${line.number}`);
  }
  return plainSource(form, found);
}

/** A line of a text, and the share of the text that is read with it. */
export type LineOfText = { readonly line: SourceLine; readonly done: number };

/** The lines of a text one by one, as `readText` gives them, so that a long one needs no room for all at once. */
export function linesOfText(
  text: string,
  name: string,
): { readonly form: "text" | "table"; readonly lines: Iterable<LineOfText> } {
  const lines = text.split("\n");
  if (lines.at(-1) === "") lines.pop();
  const named = /\.(csv|tsv|tab)$/i.test(name);
  const delimiter = named ? guessDelimiter(text) : sureDelimiter(text);
  return delimiter
    ? { form: "table", lines: tableLines(lines, delimiter) }
    : { form: "text", lines: plainLines(lines) };
}

function* plainLines(lines: readonly string[]): Generator<LineOfText> {
  for (const [i, text] of lines.entries()) yield { line: { number: i + 1, text, cells: null }, done: i / lines.length };
}

/** The records of a table in text as source lines. */
function* tableLines(lines: readonly string[], delimiter: Delimiter): Generator<LineOfText> {
  for (const { cells, first, lines: count } of recordsOf(lines, delimiter)) {
    const text = count === 1 ? lines[first]! : lines.slice(first, first + count).join("\n");
    yield { line: { number: first + 1, text, cells }, done: first / lines.length };
  }
}
