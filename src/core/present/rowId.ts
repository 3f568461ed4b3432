/**
 * Ids for new rows: the set's short name and a running number that goes on where the sheet's own end.
 *
 * Parts that come from one can or network share the number and get a letter each: HL-14a, HL-14b.
 *
 * @param short The set's short name.
 * @param taken Ids that stand in the sheet already, of any set.
 * @param families How many rows each listed part becomes: 1 for a plain part, 3 for a can of three sections.
 * @returns One list of ids for each family.
 * @example nextIds("HL", ["HL-1"], [1, 2]) // [["HL-2"], ["HL-3a", "HL-3b"]]
 */
export function nextIds(
  short: string,
  taken: readonly string[],
  families: readonly number[],
): readonly (readonly string[])[] {
  const first = 1 + taken.reduce((highest, id) => Math.max(highest, runningNumber(short, id)), 0);
  return families.map((size, index) => {
    const stem = `${short}-${first + index}`;
    return size === 1 ? [stem] : Array.from({ length: size }, (_, nth) => stem + letters(nth));
  });
}

/** The running number in an id of this set, or 0. */
function runningNumber(short: string, id: string): number {
  if (!id.startsWith(`${short}-`)) return 0;
  const digits = /^\d+/.exec(id.slice(short.length + 1));
  return digits ? Number(digits[0]) : 0;
}

/** a, b, ... z, aa, ab: a network may have more pieces than the alphabet letters. */
function letters(nth: number): string {
  const last = String.fromCharCode(97 + (nth % 26));
  return nth < 26 ? last : letters(Math.floor(nth / 26) - 1) + last;
}

/**
 * Which rows need an id: one that has none, and one whose id stands further up already (a copied row).
 *
 * @returns The new id by row number, from 0.
 * @example idsToGive("HL", ["HL-1", "HL-1", null]) // Map { 1 => "HL-2", 2 => "HL-3" }
 */
export function idsToGive(short: string, ids: readonly (string | null)[]): ReadonlyMap<number, string> {
  const seen = new Set<string>();
  const without: number[] = [];
  ids.forEach((id, row) => {
    if (id === null || seen.has(id)) without.push(row);
    else seen.add(id);
  });
  const fresh = nextIds(
    short,
    [...seen],
    without.map(() => 1),
  );
  return new Map(without.map((row, index) => [row, fresh[index]![0]!]));
}
