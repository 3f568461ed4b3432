import type { Note } from "../layout/row.js";

/** What a document says of the prefixes of its designators: the circuit each one means, and whether none means all of them. */
export type Circuits = { readonly named: ReadonlyMap<string, string>; readonly bareIsAll: boolean };

const NAMED = /\bprefix\s+(\w{1,2})\b(?:(?!\bprefix\b).){0,80}?(?:\b([A-Z]\d{1,2})\b|\b(?:in|of|to|for) the (\w+))/gi;
const BARE_IS_ALL = /\bno prefix\b.{0,60}\b(?:both|all)\b/i;
const LONGEST_SAID = 5000;

const TABLED = /\bprefix(?:es)?\b\s*[:.]?\s*((?:[A-Z]|\d{1,2})\s*=.*)/i;
const ENTRY = /(?:^|[,;]\s*)([A-Z]|\d{1,2})\s*=\s*([^,;.=]+?)(?=\s*(?:[,;.]|$))/g;

/**
 * The circuits that notes give: "Prefix 1 refers to circuit A1, prefix 2 to A2. Where no prefix is shown it applies to
 * both"; "PREFIX A = INPUT STAGE, B = OUTPUT STAGE".
 */
export function circuitsOf(notes: readonly Note[]): Circuits {
  const said = notes
    .map((note) => note.text)
    .join(" ")
    .slice(0, LONGEST_SAID);
  const tabled = [...(TABLED.exec(said)?.[1] ?? "").matchAll(ENTRY)];
  const named = new Map([
    ...[...said.matchAll(NAMED)].map(([, prefix, code, word]) => [prefix!, (code ?? word)!] as const),
    ...tabled.map(([, prefix, circuit]) => [prefix!, circuit!] as const),
  ]);
  return { named, bareIsAll: named.size > 1 && BARE_IS_ALL.test(said) };
}

/** The circuit that all names of a row are prefixed with (A-R193), by the name the notes give it, and how many it stands for. */
export function circuitOf(
  names: readonly string[],
  { named, bareIsAll }: Circuits,
): { readonly section: string | null; readonly count: number } {
  const prefixes = new Set(names.map((name) => /^([A-Z]|\d{1,2})-[A-Z]{1,3}\d/.exec(name)?.[1] ?? null));
  const [prefix = null] = prefixes;
  if (prefixes.size === 1 && prefix !== null) return { section: named.get(prefix) ?? prefix, count: 1 };
  const isAll = bareIsAll && prefixes.size === 1;
  return isAll ? { section: [...named.values()].join("+"), count: named.size } : { section: null, count: 1 };
}
