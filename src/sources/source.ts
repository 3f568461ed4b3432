import type { SourceLine } from "../core/index.js";
import type { Patience } from "../threads/patience.js";

/** A page of a document or a sheet of a workbook, and the number of its first line. */
export type SourcePage = { readonly name: string; readonly firstLine: number };

/**
 * Where a line stands on its page (1-based): ratios of the page's height from its top, and of its width from its left edge.
 * For showing the picture beside the reading.
 */
export type LinePlace = {
  readonly line: number;
  readonly page: number;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
};

/** A word of a scanned line in doubt: how sure the eye was of it, 0..1, and where it stands, if the picture tells its size. */
export type DoubtfulWord = {
  readonly line: number;
  readonly word: string;
  readonly confidence: number;
  readonly place: LinePlace | null;
};

/**
 * A file as lines, whatever it was: nothing is interpreted, nothing left out.
 *
 * Line numbers run on over pages and sheets; the first sheet's are its row numbers.
 */
export type Source = {
  readonly form: "text" | "table" | "workbook" | "pdf" | "scan";
  readonly lines: readonly SourceLine[];
  readonly pages: readonly SourcePage[];
  readonly places: readonly LinePlace[];
  readonly doubtful: readonly DoubtfulWord[];
};

/** How to read a source: told of progress, stopped by a signal, seconds it may take. */
export type ReadOptions = Patience & { readonly timeLimit?: number };

/** A source of one page without pictures. */
export function plainSource(form: Source["form"], lines: readonly SourceLine[]): Source {
  return { form, lines, pages: [], places: [], doubtful: [] };
}
