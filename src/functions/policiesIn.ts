import {
  type Cell,
  DERATING_POLICIES,
  DERATING_SHEET,
  type DeratingRow,
  keysOf,
  PartsError,
  placesOf,
} from "../core/index.js";
import { amount, choice, rating, text } from "./ask.js";
import { type Ask, BLANK, rowsOf } from "./cell.js";

/**
 * The derating policies that a range of a sheet holds: the sheet Derating with its heads, or rows with its columns in
 * their order. The published ones where no range is given; rows that are not filled are passed over.
 *
 * @throws PartsError when a cell of a filled row can't be read
 */
export function policiesIn(range: unknown): readonly DeratingRow[] {
  if (range === null || range === undefined) return DERATING_POLICIES;
  const rows = rowsOf(range);
  const underHeads = placesOf(DERATING_SHEET, rows[0]!);
  const hasHeads = underHeads.policy !== undefined && underHeads.share !== undefined;
  const places = hasHeads ? underHeads : Object.fromEntries(keysOf(DERATING_SHEET).map((key, place) => [key, place]));
  return rows.slice(hasHeads ? 1 : 0).flatMap((row, at): DeratingRow[] => {
    const name = `policies row ${at + (hasHeads ? 2 : 1)}`;
    return policyIn((key) => row[places[key] ?? -1] ?? null, name);
  });
}

type Key = keyof typeof DERATING_SHEET.columns;

function policyIn(cell: (key: Key) => Cell, name: string): DeratingRow[] {
  const found = <T>(key: Key, ask: Ask<T>) => ask.read(cell(key));
  const policy = found("policy", text(null));
  const part = found("part", text(null));
  if (policy === BLANK || part === BLANK) return [];
  const of = found("of", choice(null, name, ["watts", "volts"] as const));
  const share = found("share", rating(null, name, "ratio"));
  if (of === BLANK || share === BLANK) {
    throw new PartsError("not-a-list", "this row", "Fill policy, part, watts or volts, and the share.", name);
  }
  const celsius = (key: "kneeCelsius" | "zeroCelsius") => found(key, amount<null>(null, name, null)) as number | null;
  const source = found("source", text(null, "the user's own")) as string;
  return [
    { policy, part, of, share, kneeCelsius: celsius("kneeCelsius"), zeroCelsius: celsius("zeroCelsius"), source },
  ];
}
