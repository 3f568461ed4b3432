import type { ListedPart } from "../../../src/core/part.js";
import { type ReadOptions, readList } from "../../../src/core/read/readList.js";
import type { SourceLine } from "../../../src/core/read/sourceLine.js";

/** A text as source lines; with a separator each line has cells. */
export const linesOf = (text: string, separator?: string): SourceLine[] =>
  text.split("\n").map((line, i) => ({ number: i + 1, text: line, cells: separator ? line.split(separator) : null }));

/** A list in a text, read. */
export const readText = (text: string, options?: ReadOptions, separator?: string) =>
  readList(linesOf(text, separator), options);

/** The part of a text that has this designator (the first, if several). */
export function partOf(text: string, name: string, options?: ReadOptions, separator?: string): ListedPart {
  const found = readText(text, options, separator).parts.find((part) => part.designators.includes(name));
  if (!found) throw new Error(`${name} was not read`);
  return found;
}

/** The warnings of a part, by code. */
export const codesOf = (part: ListedPart) => part.warnings.map((warning) => warning.code);
