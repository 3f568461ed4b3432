import type { Cell } from "../table.js";
import { likeness, type Sheet } from "./sheet.js";
import { DOCUMENTS_SHEET, DRIFT_SHEET, LINES_SHEET, PROJECTS_SHEET, READINGS_SHEET } from "./sheets/papers.js";
import { PART_NUMBERS_SHEET } from "./sheets/partNumbers.js";
import { PARTS_SHEET } from "./sheets/parts.js";
import { DERATING_SHEET, RULES_SHEET, SETTINGS_SHEET } from "./sheets/rulebook.js";
import { SAME_PARTS_SHEET } from "./sheets/sameParts.js";
import { CURRENCIES_SHEET, OFFERS_SHEET, ON_HAND_SHEET, ORDER_SHEET, VENDORS_SHEET } from "./sheets/shop.js";

/** Every structured sheet of a workbook, in the order of its tabs. */
export const SHEETS: readonly Sheet[] = [
  PROJECTS_SHEET,
  DOCUMENTS_SHEET,
  PARTS_SHEET,
  LINES_SHEET,
  PART_NUMBERS_SHEET,
  SAME_PARTS_SHEET,
  READINGS_SHEET,
  DRIFT_SHEET,
  OFFERS_SHEET,
  VENDORS_SHEET,
  CURRENCIES_SHEET,
  ON_HAND_SHEET,
  ORDER_SHEET,
  RULES_SHEET,
  SETTINGS_SHEET,
  DERATING_SHEET,
];

const ALIKE_ENOUGH = 0.6;

/**
 * The sheet of a workbook that holds what is asked for: the one with its name, else the one whose heads are most like it.
 *
 * At least 60 % of the heads have to agree, and more than with any other sheet (Offers and On hand share most of theirs).
 *
 * @param found The workbook's sheets with the heads in their first row.
 * @example findSheet(PARTS_SHEET, [{ name: "Harborlight", heads: ["id", "set", "designator", ...] }]) // "Harborlight"
 */
export function findSheet(
  wanted: Sheet,
  found: readonly { readonly name: string; readonly heads: readonly Cell[] }[],
): string | null {
  const named = found.find((each) => each.name.toLowerCase() === wanted.name.toLowerCase());
  if (named) return named.name;
  const rivals = SHEETS.filter((sheet) => sheet !== wanted);
  const ranked = found
    .map((each) => ({ name: each.name, score: likeness(wanted, each.heads), heads: each.heads }))
    .filter((each) => each.score >= ALIKE_ENOUGH && rivals.every((rival) => likeness(rival, each.heads) < each.score))
    .sort((a, b) => b.score - a.score);
  return ranked[0]?.name ?? null;
}
