import { type DocumentReading, type ListAnswers, readingDocument, type SourceLine } from "../core/index.js";
import { driven } from "../threads/driven.js";
import type { Patience } from "../threads/patience.js";
import { readSource } from "./readSource.js";
import type { Source } from "./source.js";

/** Whoever reads lists: a file's lines, and what lines mean. Both may take long. */
export type ListReader = {
  /** A file of any form as lines. @throws PartsError as `readSource` does. */
  readonly read: (name: string, bytes: Uint8Array, patience?: Patience) => Promise<Source>;
  /** What the lines of a parts list mean, as `readDocument` finds it. */
  readonly understand: (
    lines: readonly SourceLine[],
    answers: ListAnswers,
    patience?: Patience,
  ) => Promise<DocumentReading>;
};

/** Reads lists in whatever thread it runs. @param now Milliseconds. */
export const listReader = (now: () => number): ListReader => ({
  read: readSource,
  understand: (lines, answers, patience = {}) =>
    driven(readingDocument(lines, answers), "finding out what the lines mean", patience, now),
});
