import Papa from "papaparse";

/** One record of a table in text: its cells, the index of its first line (from 0) and how many lines it takes. */
export type TextRecord = { readonly cells: string[]; readonly first: number; readonly lines: number };

const MOST_LINES = 20;

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
    const record = recordAt(lines, first, delimiter);
    yield record;
    first += record.lines;
  }
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
