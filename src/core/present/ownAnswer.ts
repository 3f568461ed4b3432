import { originText, readFrom } from "./from.js";
import { headsOf } from "./sheet.js";
import { PARTS_SHEET, type PartsRow } from "./sheets/parts.js";

/** What `from` keeps of an answer that was empty when it became a value. */
export const NO_ANSWER = "nothing";

const HEADS = headsOf(PARTS_SHEET);

/**
 * True for a cell that holds what we wrote into it as a value, as the row's `from` keeps it; anything else in it is the user's.
 *
 * @example isOurs({ ...row, verdict: "bad", from: "verdict bad (rule)" }, "verdict") // true
 */
export function isOurs(row: PartsRow, key: keyof PartsRow): boolean {
  const { head } = PARTS_SHEET.columns[key];
  const text = String(row[key] ?? NO_ANSWER);
  const origin = readFrom(row.from, HEADS).find((each) => each.head === head);
  return origin !== undefined && (origin.text === text || origin.text === originText(text));
}
