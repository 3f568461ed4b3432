import { type DocumentReading, type ListAnswers, PartsError } from "../core/index.js";
import type { PagePictures } from "../sources/pictures/pagePictures.js";
import type { ListReader } from "../sources/reader.js";
import type { LinePlace, Source } from "../sources/source.js";
import type { Patience } from "../threads/patience.js";

/** Reads a file of any form as lines; in a page in a thread of its own. */
export type ReadFile = ListReader["read"];

/** Finds out what the lines of a list mean; in a page in a thread of its own. */
export type UnderstandLines = ListReader["understand"];

/** The pages of a file that was read as pictures; null for a file that has no look of its own. */
export type ShowPages = (form: Source["form"], bytes: Uint8Array) => PagePictures | null;

export type { LinePlace, PagePictures, Patience, Source };

/** What of a source bears on how it is understood. */
type PreviewSource = Pick<Source, "lines" | "doubtful">;

/** Lines beyond this are no parts list: a factory list has a few thousand at most. */
const MOST_LINES = 20_000;

/**
 * A file or a pasted text as lines, with what stands where and which words are in doubt.
 *
 * @throws PartsError "not-a-list" for nothing at all, "unreadable" for what is no text, "too-much" for far too many lines.
 */
export async function listSource(
  read: ReadFile,
  name: string,
  bytes: Uint8Array,
  patience: Patience = {},
): Promise<Source> {
  const source = await read(name, bytes, patience);
  const { lines } = source;
  if (lines.length > MOST_LINES) {
    throw new PartsError(
      "too-much",
      `${lines.length} lines`,
      `A parts list of up to ${MOST_LINES} lines can be read; give it in parts.`,
    );
  }
  return source;
}

/** A pasted text as lines. */
export const pastedSource = (read: ReadFile, text: string, patience: Patience = {}): Promise<Source> =>
  listSource(read, "what you pasted", new TextEncoder().encode(text), patience);

/**
 * How a list is understood, line by line, before anything is written.
 *
 * @throws PartsError "not-a-list" where no line is a part.
 */
export async function previewList(
  understand: UnderstandLines,
  { lines, doubtful }: PreviewSource,
  answers: ListAnswers,
  patience: Patience = {},
): Promise<DocumentReading> {
  const reading = await understand(lines, { ...answers, doubtful }, patience);
  if (reading.parts.length === 0) {
    throw new PartsError(
      "not-a-list",
      `${lines.length} lines`,
      'Give lines such as "R7  470K  1/2 W" or a table with a column for the designator.',
    );
  }
  return reading;
}
