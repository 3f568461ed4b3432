import type { SourceLine } from "../core/index.js";
import { type Delimiter, guessDelimiter } from "./delimiter.js";
import { recordsOf } from "./records.js";
import { plainSource, type ReadOptions, type Source } from "./source.js";

const PROGRESS_EVERY = 50_000;

/**
 * Text as lines; with cells where it is a table (CSV, TSV, cells copied from a sheet).
 *
 * In a file that is not named as a table only tabs make columns: commas and semicolons stand in prose too.
 *
 * @param text Line ends are "\n".
 * @example readText("R1\t470K\nR2\t1M", "pasted").lines[1] // { number: 2, text: "R2\t1M", cells: ["R2", "1M"] }
 */
export function readText(text: string, name: string, onProgress?: ReadOptions["onProgress"]): Source {
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
  return plainSource("table", tableLines(lines, delimiter, onProgress));
}

/** The records of a table in text as source lines. */
function tableLines(
  lines: readonly string[],
  delimiter: Delimiter,
  onProgress?: ReadOptions["onProgress"],
): SourceLine[] {
  const found: SourceLine[] = [];
  for (const { cells, first, lines: count } of recordsOf(lines, delimiter)) {
    const text = count === 1 ? lines[first]! : lines.slice(first, first + count).join("\n");
    found.push({ number: first + 1, text, cells });
    if (found.length % PROGRESS_EVERY === 0) onProgress?.(first / lines.length, `row ${first + 1}`);
  }
  return found;
}
