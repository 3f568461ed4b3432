/** What a column of pasted readings holds; "unused" is told to the user. */
export type PastedRole =
  | "id"
  | "part"
  | "section"
  | "reading"
  | "leakage"
  | "ESR"
  | "insulation"
  | "inPlace"
  | "accuracy"
  | "remark"
  | "unused";

/** One column of a pasted table: its role, and the unit its head gives to bare figures ("" where it gives none). */
export type PastedHead = { readonly role: PastedRole; readonly head: string; readonly unit: string };

/** The words of heads, as people write them at the bench (common practice). */
const HEADS: readonly (readonly [PastedRole, RegExp])[] = [
  ["id", /^(?:row )?id$/],
  ["part", /^(?:part|part no|designator|designation|ref|reference|des|item|component|symbol|no)\.?$/],
  ["section", /^(?:section|chassis|sub-?chassis|block)$/],
  ["reading", /^(?:reading|read|reads|measured|measurement|found|actual|meter)\.?$/],
  ["leakage", /^(?:leak|leaks|leakage|leakage current)$/],
  ["ESR", /^(?:esr|series resistance)$/],
  ["insulation", /^(?:insulation|insulation resistance|ins|ir)\.?$/],
  ["inPlace", /^(?:in place|in circuit|lifted|lead|lead lifted|lead up|how)$/],
  ["accuracy", /^(?:meter accuracy|accuracy|acc|meter is good to|±)\.?$/],
  ["remark", /^(?:remark|remarks|note|notes|comment|comments)$/],
];

/** Bare figures below such a head are in this unit where the head gives none. */
const USUAL: Readonly<Partial<Record<PastedRole, string>>> = { leakage: "µA", ESR: "Ω", insulation: "MΩ" };

/** The cells of a pasted line: by tabs, else by semicolons, else by two blanks or more. */
export function cellsOf(line: string): readonly string[] {
  const by = line.includes("\t") ? "\t" : line.includes(";") ? ";" : /\s{2,}/;
  return line.split(by).map((cell) => cell.trim());
}

/**
 * The columns of a pasted table by its head line; null where the line is none.
 *
 * A head line names a part or an id and at least one quantity; "value" is what was read only where nothing else is.
 *
 * @example headsOfPaste("part\treading\tESR")?.map(({ role }) => role) // ["part", "reading", "ESR"]
 */
export function headsOfPaste(line: string): readonly PastedHead[] | null {
  const spaced = cellsOf(line);
  const cells = spaced.length > 1 ? spaced : line.trim().split(/[\s,]+/);
  const heads = cells.map(headOf);
  const has = (...roles: readonly PastedRole[]) => heads.some(({ role }) => roles.includes(role));
  const value = heads.findIndex(({ head }) => /^value\b/i.test(head));
  const read = has("reading", "leakage", "ESR", "insulation") || value >= 0;
  if (!has("part", "id") || !read) return null;
  if (has("reading", "leakage", "ESR", "insulation")) return heads;
  return heads.map((head, at) => (at === value ? { ...head, role: "reading" } : head));
}

function headOf(head: string): PastedHead {
  const [, name, unit] = /^(.*?)\s*(?:[([,]\s*([a-zA-ZµΩ%]+)\s*[)\]]?)?$/.exec(head)!;
  const role = HEADS.find(([, words]) => words.test((name ?? "").toLowerCase()))?.[0] ?? "unused";
  return { role, head, unit: unit ?? USUAL[role] ?? "" };
}
