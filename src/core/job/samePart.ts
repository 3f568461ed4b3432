import type { PartsRow } from "../present/sheets/parts.js";

/** What is known of a row when one of several has to stand for a part. */
export type Standing = {
  /** True where the row's part is on the way, in hand or fitted. */
  readonly settled: (row: PartsRow) => boolean;
  /** True where the user said what becomes of the part. */
  readonly said: (row: PartsRow) => boolean;
  /** True where the row's part is to be bought. */
  readonly bought: (row: PartsRow) => boolean;
};

/**
 * Rows that another row stands for: two lists of one set name the same part, and it is counted and bought once.
 *
 * A row says so in its "same part as", with the other row's id. Of such rows one stands for all: one that is on the way, in
 * hand or fitted; else one of which the user said what becomes of it; else the one to be bought that asks the most volts,
 * then watts; else the first.
 *
 * @returns The ids of the rows that are not counted.
 */
export function spokenFor(rows: readonly PartsRow[], standing: Standing): ReadonlySet<string> {
  return new Set(
    samePartGroups(rows).flatMap((group) => {
      const speaker = speakerOf(group, standing);
      return group.flatMap((row) => (row === speaker || row.id === null ? [] : [row.id]));
    }),
  );
}

function speakerOf(group: readonly PartsRow[], { settled, said, bought }: Standing): PartsRow {
  const safest = (rows: readonly PartsRow[]) => rows.reduce<PartsRow | undefined>(safer, undefined);
  return group.find(settled) ?? safest(group.filter(said)) ?? safest(group.filter(bought)) ?? group[0]!;
}

function safer(best: PartsRow | undefined, row: PartsRow): PartsRow {
  if (!best) return row;
  const lead = (row.newVolts ?? 0) - (best.newVolts ?? 0) || (row.newWatts ?? 0) - (best.newWatts ?? 0);
  return lead > 0 ? row : best;
}

/**
 * Rows of one set that are one part, two and more together, in the order of the sheet; an id that no row of the set has joins
 * nothing.
 */
export function samePartGroups(rows: readonly PartsRow[]): readonly (readonly PartsRow[])[] {
  const naming = rows.filter(({ sameAs }) => sameAs !== null);
  if (naming.length === 0) return [];
  const groupOf = new Map(rows.map((row) => [row, [row]]));
  const byId = new Map(rows.map((row) => [row.id, row]));
  for (const row of naming) {
    const named = byId.get(row.sameAs!.trim());
    if (!named || named.project !== row.project) continue;
    const [one, other] = [groupOf.get(named)!, groupOf.get(row)!];
    if (one === other) continue;
    const joined = [...one, ...other];
    for (const each of joined) groupOf.set(each, joined);
  }
  return [...new Set(groupOf.values())].filter((group) => group.length > 1);
}
