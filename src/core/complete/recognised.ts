import type { Sure } from "../fact.js";
import type { Kind, ListedPart } from "../part.js";

/** What a part was taken for: the id of a rule row, how sure, and what told it. */
export type Recognised = { readonly id: string; readonly sure: Sure; readonly why: string };

/** What a row of a table of words looks at. `words` is the part's line and use in small letters, `era` a year. */
export type Clues = { readonly part: ListedPart; readonly words: string; readonly era: number | null };

/**
 * One way to recognise a class or a use: the kinds it is for, the words that must stand there, a further test, and the verdict.
 *
 * Rows are tried in order; the first that holds speaks.
 */
export type Clue = {
  readonly id: string;
  readonly kinds: readonly Kind[] | "any";
  readonly words?: RegExp;
  readonly when?: (clues: Clues) => boolean;
  readonly sure: Sure;
  readonly why: string;
};

/** The line and the use of a part as one text in small letters, without its designators. */
export function wordsOf(part: ListedPart): string {
  const words = `${part.use ?? ""} ${part.printed}`.toLowerCase();
  return part.designators.reduce((text, name) => text.replace(name.toLowerCase(), " "), words);
}

/** The first row that holds, or null where none does. */
export function firstClue(rows: readonly Clue[], clues: Clues): Recognised | null {
  const found = rows.find(
    (row) =>
      (row.kinds === "any" || row.kinds.includes(clues.part.kind)) &&
      (row.words === undefined || row.words.test(clues.words)) &&
      (row.when === undefined || row.when(clues)),
  );
  return found ? { id: found.id, sure: found.sure, why: found.why } : null;
}
