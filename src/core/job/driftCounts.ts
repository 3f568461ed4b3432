import { drift, driftSummary } from "../measure/drift.js";
import type { DriftRow } from "../present/sheets/papers.js";
import type { PartsRow } from "../present/sheets/parts.js";
import { attempt } from "../problem.js";
import type { RulesInForce } from "../rule.js";
import { stagesOf } from "./workOut.js";

type Read = {
  readonly row: PartsRow;
  readonly nominal: number;
  readonly reading: number;
  readonly isBeyond: boolean;
  /** False for open, and for one that lies low in place: that is its neighbours, not its drift. */
  readonly isDrift: boolean;
};

/**
 * How far the resistors of one set have drifted: counted by value, by watts and by section, never as shares of a few.
 *
 * "Beyond" is outside the limits that the rules hold each part to. A reading taken in place that lies below them counts as
 * read and no more, for a parallel path lowers it.
 *
 * @param rows As they are to be judged: a verdict in them is the user's.
 * @example driftCounts(rows, DEFAULTS_IN_FORCE)[0] // { by: "value", group: "470 k", read: 7, middle: 0.12, beyond: 2, ... }
 */
export function driftCounts(rows: readonly PartsRow[], inForce: RulesInForce): readonly DriftRow[] {
  const read = rows.flatMap((row) => readOf(row, inForce));
  const bySize = [...read].sort((a, b) => a.nominal - b.nominal);
  const byWatts = [...read].sort((a, b) => (a.row.watts ?? 0) - (b.row.watts ?? 0));
  return [
    ...groups("value", bySize, ({ value }) => value ?? ""),
    ...groups("watts", byWatts, ({ watts }) => (watts === null ? "not known" : `${watts} W`)),
    ...groups("section", read, ({ section }) => section ?? "no section"),
  ];
}

function groups(by: DriftRow["by"], read: readonly Read[], nameOf: (row: PartsRow) => string): readonly DriftRow[] {
  const names = [...new Set(read.map(({ row }) => nameOf(row)))];
  return names.map((group) => {
    const members = read.filter(({ row }) => nameOf(row) === group);
    const drifts = members.filter(({ isDrift }) => isDrift).map(drift);
    const summary = driftSummary(members.filter(({ isDrift }) => isDrift).map((each) => ({ ...each, limit: 0 })));
    return {
      project: members[0]!.row.project,
      by,
      group,
      read: members.length,
      middle: summary?.median ?? null,
      least: summary && Math.min(...drifts),
      most: summary && Math.max(...drifts),
      beyond: members.filter(({ isBeyond }) => isBeyond).length,
      open: members.filter(({ reading }) => reading === Number.POSITIVE_INFINITY).length,
    };
  });
}

/** The reading of a resistor against its limits; nothing for other parts, and for rows that cannot be worked out. */
function readOf(row: PartsRow, inForce: RulesInForce): readonly Read[] {
  if (row.kind !== "resistor" || row.reading === null) return [];
  const judged = attempt(
    () => stagesOf(row, inForce).decision.judged,
    () => [],
  );
  const nominal = row.size ?? 0;
  return judged.flatMap(({ reading: { quantity, value, inPlace }, limits }) => {
    if (quantity !== "resistance" || value === null || !(nominal > 0)) return [];
    const isLow = limits !== null && value < limits.min;
    const isBeyond = limits !== null && (value > limits.max || (isLow && !inPlace));
    return [{ row, nominal, reading: value, isBeyond, isDrift: Number.isFinite(value) && !(isLow && inPlace) }];
  });
}
