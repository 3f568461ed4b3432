import type { CellFunction } from "./catalogue.js";

/** Functions on one subject, the ones that are met first in front. */
export type Chapter = { readonly title: string; readonly functions: readonly CellFunction[] };

/** What cell functions are about, in the order of the job, and the files that hold them. */
const CHAPTERS: readonly { readonly title: string; readonly files: readonly string[] }[] = [
  { title: "One part, from its line to the new one", files: ["parts"] },
  { title: "Values, codes and colours", files: ["values", "standards", "marks", "bands"] },
  { title: "Ratings to buy", files: ["power", "supply", "rectifier", "bodies"] },
  { title: "Making a value up", files: ["composition", "worstCase"] },
  { title: "On the bench", files: ["bench", "capacitors"] },
  { title: "At the line, and stored charge", files: ["line"] },
  { title: "Offers and orders", files: ["offers", "packs"] },
  { title: "Behind the sheets", files: ["rules", "answer"] },
];

/**
 * Cell functions in chapters; within a file they stand as they do in it.
 *
 * @throws Error for a file that no chapter names.
 */
export function inChapters(functions: readonly CellFunction[]): readonly Chapter[] {
  const named = CHAPTERS.flatMap(({ files }) => files.map((file) => `${file}.ts`));
  const stray = functions.find(({ file }) => !named.includes(file));
  if (stray) throw new Error(`No chapter of the reference names ${stray.file}, where ${stray.id} stands.`);
  const of = (name: string) => functions.filter(({ file }) => file === `${name}.ts`);
  return CHAPTERS.map(({ title, files }) => ({ title, functions: files.flatMap(of) })).filter(
    ({ functions }) => functions.length > 0,
  );
}
