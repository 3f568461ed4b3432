import { type DocumentReading, type ListAnswers, PartsError, readDocument, type SourceLine } from "../core/index.js";
import type { Source } from "../sources/source.js";

/** Reads a file of any form as lines; in a page in a thread of its own. */
export type ReadFile = (name: string, bytes: Uint8Array) => Promise<Source>;

/** Lines beyond this are no parts list: a factory list has a few thousand at most. */
const MOST_LINES = 20_000;

/**
 * The lines of a pasted text or of a file.
 *
 * @throws PartsError "not-a-list" for nothing at all, "unreadable" for what is no text, "too-much" for far too many lines.
 */
export async function linesOf(read: ReadFile, name: string, bytes: Uint8Array): Promise<readonly SourceLine[]> {
  const { lines } = await read(name, bytes);
  if (lines.length > MOST_LINES) {
    throw new PartsError(
      "too-much",
      `${lines.length} lines`,
      `A parts list of up to ${MOST_LINES} lines can be read; give it in parts.`,
    );
  }
  return lines;
}

/** The lines of a pasted text. */
export const linesOfText = (read: ReadFile, text: string): Promise<readonly SourceLine[]> =>
  linesOf(read, "what you pasted", new TextEncoder().encode(text));

/**
 * How a list is understood, line by line, before anything is written.
 *
 * @throws PartsError "not-a-list" where no line is a part.
 */
export function previewList(lines: readonly SourceLine[], answers: ListAnswers): DocumentReading {
  const reading = readDocument(lines, answers);
  if (reading.parts.length === 0) {
    throw new PartsError(
      "not-a-list",
      `${lines.length} lines`,
      'Give lines such as "R7  470K  1/2 W" or a table with a column for the designator.',
    );
  }
  return reading;
}
