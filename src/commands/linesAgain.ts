import { type Book, valuesOf } from "./book.js";

/** A document as the sheet Lines holds it: its set, its name, how many lines. */
export type KeptDocument = { readonly project: string; readonly document: string; readonly lines: number };

/** The documents whose lines the workbook holds, in the order in which they were brought in. */
export function keptDocuments(book: Book): readonly KeptDocument[] {
  const counts = new Map<string, KeptDocument>();
  for (const { project, document } of valuesOf(book.lines)) {
    if (project === null || document === null) continue;
    const key = JSON.stringify([project, document]);
    counts.set(key, { project, document, lines: (counts.get(key)?.lines ?? 0) + 1 });
  }
  return [...counts.values()];
}

/** The text of a document from the sheet Lines, each line where it stood, to be read again. */
export function textFromLines(book: Book, { project, document }: Pick<KeptDocument, "project" | "document">): string {
  const text: string[] = [];
  for (const row of valuesOf(book.lines))
    if (row.project === project && row.document === document && row.line !== null && row.text !== null)
      text[row.line - 1] = row.text;
  return Array.from(text, (line) => line ?? "").join("\n");
}
