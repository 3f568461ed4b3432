import type { PartsRow } from "../present/sheets/parts.js";

/** What a row says of its own buying. */
type Buying = {
  /** True where the row's part is to be bought. */
  readonly bought: (row: PartsRow) => boolean;
  /** True where the row's part is on the way, in hand or fitted. */
  readonly settled: (row: PartsRow) => boolean;
};

/**
 * Rows that another row speaks for: two lists of one set name the same part, and it is bought once.
 *
 * A row says so in its "same part as", with the other row's id. Of such rows one is asked for: none when one of them is on
 * the way, in hand or fitted; otherwise the one to be bought that asks the most volts, then watts,
 * then the one that another names.
 *
 * @returns The ids of the rows that ask for nothing of their own.
 */
export function spokenFor(rows: readonly PartsRow[], { bought, settled }: Buying): ReadonlySet<string> {
  return new Set(
    groupsOf(rows).flatMap((group) => {
      const speaker = group.find(settled) ?? group.filter(bought).reduce<PartsRow | undefined>(safer, undefined);
      return speaker ? group.flatMap((row) => (row === speaker || row.id === null ? [] : [row.id])) : [];
    }),
  );
}

function safer(best: PartsRow | undefined, row: PartsRow): PartsRow {
  if (!best) return row;
  const lead = (row.newVolts ?? 0) - (best.newVolts ?? 0) || (row.newWatts ?? 0) - (best.newWatts ?? 0);
  return lead > 0 ? row : best;
}

/** Rows of one set that are one part; an id that no row of the set has joins nothing. */
function groupsOf(rows: readonly PartsRow[]): readonly (readonly PartsRow[])[] {
  const groupOf = new Map(rows.map((row) => [row, [row]]));
  const byId = new Map(rows.map((row) => [row.id, row]));
  for (const row of rows) {
    const named = row.sameAs === null ? undefined : byId.get(row.sameAs.trim());
    if (!named || named.project !== row.project) continue;
    const [one, other] = [groupOf.get(named)!, groupOf.get(row)!];
    if (one === other) continue;
    const joined = [...one, ...other];
    for (const each of joined) groupOf.set(each, joined);
  }
  return [...new Set(groupOf.values())].filter((group) => group.length > 1);
}
