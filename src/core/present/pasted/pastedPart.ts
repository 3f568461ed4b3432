import type { PartsRow } from "../sheets/parts.js";

/** What a paste is about: all rows of the set, the section that holds, and the rows that bare figures take in turn. */
export type PasteInto = {
  readonly rows: readonly PartsRow[];
  readonly section: string | null;
  readonly inOrder: readonly number[];
};

/** Where a designator stands and what is written behind it, or why no row is meant. */
export type FoundPart = { readonly at: number; readonly rest: string } | { readonly reason: string };

/** A name without what people leave out or put in: "R-12" is "r 12". */
export const plainName = (name: string | null): string => (name ?? "").replace(/[-\s.]/g, "").toUpperCase();

const LOOKS_LIKE_ONE = /^[A-Z]{1,3}\d{1,4}[A-Z]?$/;
const AFTER = /^[\s:=,;.–-]+/;
/** A designator is one word, or a letter and a figure ("R 12"), or a can and its section ("C 3 A"). */
const MOST_WORDS = 3;

type Named = { readonly name: string; readonly rest: string; readonly places: readonly number[] };

/** The names that a line may start with, longest first. */
function namesAtStart(text: string, { rows }: PasteInto): readonly Named[] {
  const words = [...text.matchAll(/[^\s:=,;]+/g)].slice(0, MOST_WORDS);
  return words
    .map((word) => {
      const name = plainName(text.slice(words[0]!.index, word.index + word[0].length).replace(/[:=,;]/g, ""));
      const places = rows.flatMap((row, at) => (plainName(row.designator) === name ? [at] : []));
      return { name, places, rest: text.slice(word.index + word[0].length).replace(AFTER, "") };
    })
    .reverse();
}

/** True for a line that starts with a designator of the set, or with what looks like one. A lone figure is never one. */
export function namesPart(text: string, into: PasteInto): boolean {
  return namesAtStart(text.trim(), into).some(
    ({ name, places, rest }) => LOOKS_LIKE_ONE.test(name) || (places.length > 0 && rest !== ""),
  );
}

/** The section that a line names and nothing else; null for any other line. */
export function sectionNamed(text: string | null, { rows }: PasteInto): string | null {
  const plain = (name: string | null) => (name ?? "").trim().replace(/:$/, "").toLowerCase();
  const wanted = plain(text);
  return wanted === "" ? null : (rows.find(({ section }) => plain(section) === wanted)?.section ?? null);
}

/**
 * The row that a line starts with: the one in the section that holds, else the only one of the set.
 *
 * @example findPart("R12 612k", into) // { at: 11, rest: "612k" }
 */
export function findPart(text: string, into: PasteInto): FoundPart {
  const names = namesAtStart(text.trim(), into);
  const known = names.find(({ places }) => places.length > 0);
  if (!known) return { reason: unknown(names, text.trim()) };
  const here = known.places.filter((at) => into.rows[at]!.section === into.section);
  const meant = here.length > 0 ? here : known.places;
  if (meant.length === 1) return { at: meant[0]!, rest: known.rest };
  const sections = meant.map((at) => into.rows[at]!.section ?? "no section");
  return {
    reason: `${known.name} stands in ${sections.join(" and in ")}: write the section on a line above it.`,
  };
}

function unknown(names: readonly Named[], text: string): string {
  const [name] = names.flatMap((each) => (LOOKS_LIKE_ONE.test(each.name) ? [each.name] : [])).reverse();
  return name ? `This set has no ${name}.` : `"${text}" starts with no designator: write one in front.`;
}
