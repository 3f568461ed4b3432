import type { SourceLine } from "../core/index.js";
import { type Delimiter, guessDelimiter } from "./delimiter.js";
import { recordsOf } from "./records.js";
import { plainSource, type Source } from "./source.js";

/**
 * Text as lines; with cells where it is a table (CSV, TSV, cells copied from a sheet).
 *
 * In a file that is not named as a table only tabs make columns: commas and semicolons stand in prose too.
 *
 * @param text Line ends are "\n".
 * @example readText("R1\t470K\nR2\t1M", "pasted").lines[1] // { number: 2, text: "R2\t1M", cells: ["R2", "1M"] }
 */
export function readText(text: string, name: string): Source {
  const lines = text.split("\n");
  if (lines.at(-1) === "") lines.pop();
  const named = /\.(csv|tsv|tab)$/i.test(name);
  const delimiter = guessDelimiter(text, named ? undefined : ["\t"]);
  if (!delimiter) {
    return plainSource(
      "text",
      lines.map((line, i) => ({ number: i + 1, text: line, cells: null })),
    );
  }
  return plainSource("table", tableLines(lines, delimiter));
}

/** The records of a table in text as source lines. */
export function tableLines(lines: readonly string[], delimiter: Delimiter): SourceLine[] {
  const found: SourceLine[] = [];
  for (const { cells, first, lines: count } of recordsOf(lines, delimiter)) {
    const text = count === 1 ? lines[first]! : lines.slice(first, first + count).join("\n");
    found.push({ number: first + 1, text, cells });
  }
  return found;
}
