import Papa from "papaparse";

/** One record of a table in text: its cells, the index of its first line (from 0) and how many lines it takes. */
export type TextRecord = { readonly cells: string[]; readonly first: number; readonly lines: number };

const MOST_LINES = 20;
/** Lines given to the library at once: enough to be quick, few enough to tell of progress in between. */
const WINDOW = 20_000;

/**
 * The records of a table in text, one after the other; each line is in exactly one.
 *
 * Quoted cells are read as RFC 4180 has them and may run over lines. A quote that is not closed within 20 lines spoils
 * its own line only, which is then cut at every delimiter.
 *
 * @see RFC 4180
 */
export function* recordsOf(lines: readonly string[], delimiter: string): Generator<TextRecord> {
  for (let first = 0; first < lines.length; ) {
    const end = Math.min(first + WINDOW, lines.length);
    const clean = windowOf(lines, first, end, delimiter);
    if (clean) yield* clean;
    for (let at = first; !clean && at < end; ) {
      const record = recordAt(lines, at, delimiter);
      yield record;
      first = at += record.lines;
    }
    first = Math.max(first, end);
  }
}

/** The records of these lines read at once, or null where a quote is not closed as it should be. */
function windowOf(lines: readonly string[], first: number, end: number, delimiter: string): TextRecord[] | null {
  const text = lines.slice(first, end).join("\n");
  if (!text.includes('"')) {
    return lines.slice(first, end).map((line, i) => ({ cells: line.split(delimiter), first: first + i, lines: 1 }));
  }
  if (delimiter === "\t") return null;
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: "\n" });
  if (errors.some((error) => error.type === "Quotes")) return null;
  if (data.length === end - first) return data.map((cells, i) => ({ cells, first: first + i, lines: 1 }));
  const records: TextRecord[] = [];
  let at = first;
  for (const cells of data) {
    const count =
      1 + cells.reduce((breaks, cell) => breaks + (cell.includes("\n") ? cell.split("\n").length - 1 : 0), 0);
    if (count > MOST_LINES) return null;
    records.push({ cells, first: at, lines: count });
    at += count;
  }
  return at === end ? records : null;
}

/** A cell between tabs that is nothing but a quote is the mark for "as above", no opening quote. */
const hasDittoMark = (line: string, delimiter: string) =>
  delimiter === "\t" && line.split(delimiter).some((cell) => cell.trim() === '"');

function recordAt(lines: readonly string[], first: number, delimiter: string): TextRecord {
  const line = lines[first]!;
  if (!line.includes('"') || hasDittoMark(line, delimiter)) return { cells: line.split(delimiter), first, lines: 1 };
  let text = line;
  for (let count = 1; count <= MOST_LINES; count++) {
    const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: "\n" });
    if (data.length === 1 && !errors.some((error) => error.type === "Quotes")) {
      return { cells: data[0]!, first, lines: count };
    }
    const next = lines[first + count];
    if (next === undefined) break;
    text += `\n${next}`;
  }
  return { cells: line.split(delimiter), first, lines: 1 };
}
