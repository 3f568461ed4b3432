import { readFrom, writeFrom } from "./from.js";
import type { PartKey } from "./partRow.js";
import { headsOf } from "./sheet.js";
import { PARTS_SHEET, type PartsRow } from "./sheets/parts.js";

/** The columns that a list fills; all others are the user's, the bench's or worked out. */
const LISTED = [
  "section",
  "printed",
  "document",
  "kind",
  "value",
  "size",
  "tolerance",
  "watts",
  "volts",
  "type",
  "usedAs",
  "more",
  "parent",
  "perSet",
  "unsure",
] as const;

/** What a part is known by over two readings of one list: document, section, designator, and its section of a can. */
export const samePart = ({ project, document, section, designator, parent }: PartKey): string =>
  [project, document, section, designator, parent].join("|");

/**
 * What a list read again changes in a row that stands already: cells that the user typed over stay as they are.
 *
 * @returns The cells that differ, "" where one is to be emptied.
 */
export function readAgain(old: PartsRow, fresh: PartsRow): Readonly<Partial<Record<keyof PartsRow, string | number>>> {
  const heads = headsOf(PARTS_SHEET);
  const was = readFrom(old.from, heads);
  const typed = new Set(
    was
      .filter(({ head, text }) => {
        const key = keyOf(head);
        return key !== undefined && String(old[key] ?? "") !== text;
      })
      .map(({ head }) => head),
  );
  const isTyped = (key: keyof PartsRow) => typed.has(PARTS_SHEET.columns[key === "size" ? "value" : key].head);
  const cells = LISTED.filter((key) => !isTyped(key) && old[key] !== fresh[key]).map(
    (key) => [key, fresh[key] ?? ""] as const,
  );
  const kept = was.filter(({ head }) => typed.has(head));
  const from = writeFrom([...readFrom(fresh.from, heads).filter(({ head }) => !typed.has(head)), ...kept]);
  return Object.fromEntries(from === (old.from ?? "") ? cells : [...cells, ["from", from] as const]);
}

function keyOf(head: string): keyof PartsRow | undefined {
  const keys = Object.keys(PARTS_SHEET.columns) as (keyof PartsRow)[];
  return keys.find((key) => PARTS_SHEET.columns[key].head === head);
}
