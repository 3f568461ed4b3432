import { DERATING_POLICIES, type DeratingRow, PartsError } from "../core/index.js";
import { choice, rating, text } from "./ask.js";
import { type Ask, BLANK, rowsOf } from "./cell.js";

/**
 * The derating policies that a range of a sheet holds: in each row the policy, the part, watts or volts, and the share.
 * The published ones where no range is given; rows that are not filled, and a row of heads, are passed over.
 *
 * @throws PartsError when a cell of a filled row can't be read
 */
export function policiesIn(range: unknown): readonly DeratingRow[] {
  if (range === null || range === undefined) return DERATING_POLICIES;
  return rowsOf(range).flatMap((row, at): DeratingRow[] => {
    const cell = <T>(column: number, ask: Ask<T>) => ask.read(row[column] ?? null);
    const name = `policies row ${at + 1}`;
    const policy = cell(0, text(null));
    const part = cell(1, text(null));
    if (policy === BLANK || part === BLANK || row[3] === "share") return [];
    const of = cell(2, choice(null, name, ["watts", "volts"] as const));
    const share = cell(3, rating(null, name, "ratio"));
    if (of === BLANK || share === BLANK) {
      throw new PartsError("not-a-list", "this row", "Fill policy, part, watts or volts, and the share.", name);
    }
    return [{ policy, part, of, share, source: "the user's own" }];
  });
}
