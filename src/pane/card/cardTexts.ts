import { headsOf, PARTS_SHEET, type PartsRow, readFrom } from "../../core/index.js";

const joined = (words: readonly (string | null | false)[]) => words.filter(Boolean).join(" ");

const withUnit = (figure: number | null, unit: string) => figure !== null && `${figure} ${unit}`;

/** What a part was, in one line. @example "470 k ±20 % 0.5 W Carbon composition resistor" */
export const figuresOf = (row: PartsRow): string =>
  joined([row.value, row.tolerance, withUnit(row.watts, "W"), withUnit(row.volts, "V"), row.type]);

/** What it will be, in one line; empty for a part that stays. */
export const newFigures = (row: PartsRow): string =>
  joined([row.newValue, row.newTolerance, withUnit(row.newWatts, "W"), withUnit(row.newVolts, "V"), row.newType]);

/** What the meter said, and where; "no reading yet" without one. */
export const measuredText = (row: PartsRow): string =>
  row.reading ? joined([row.reading, row.inPlace]) : "no reading yet";

const WORDS = { line: "printed", note: "page note", default: "rule", bench: "bench", user: "you" } as const;

/** Which figures are from elsewhere than the line. @example "; watts, tolerance: page note (note 2)" */
export function whence(row: PartsRow): string {
  const elsewhere = readFrom(row.from, headsOf(PARTS_SHEET)).filter((origin) => origin.from !== "line");
  const groups = new Map<string, string[]>();
  for (const { head, from, at } of elsewhere) {
    const name = at ? `${WORDS[from]} (${at})` : WORDS[from];
    groups.set(name, [...(groups.get(name) ?? []), head]);
  }
  return [...groups].map(([name, heads]) => `; ${heads.join(", ")}: ${name}`).join("");
}
