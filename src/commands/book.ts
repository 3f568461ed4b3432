import {
  CURRENCIES_SHEET,
  DEFAULTS_IN_FORCE,
  DERATING_SHEET,
  DOCUMENTS_SHEET,
  DRIFT_SHEET,
  LINES_SHEET,
  OFFERS_SHEET,
  ON_HAND_SHEET,
  ORDER_SHEET,
  PART_NUMBERS_SHEET,
  PARTS_SHEET,
  PROJECTS_SHEET,
  type ProjectsRow,
  READINGS_SHEET,
  RULES_SHEET,
  type RulesInForce,
  rulesInForce,
  SAME_PARTS_SHEET,
  SETTINGS_SHEET,
  VENDORS_SHEET,
} from "../core/index.js";
import type { Host } from "../hosts/host.js";
import { openSheet, type View } from "./openSheet.js";

/** The structured sheets by the name under which commands speak of them. */
const BOOK_SHEETS = {
  projects: PROJECTS_SHEET,
  documents: DOCUMENTS_SHEET,
  parts: PARTS_SHEET,
  lines: LINES_SHEET,
  partNumbers: PART_NUMBERS_SHEET,
  sameParts: SAME_PARTS_SHEET,
  readings: READINGS_SHEET,
  drift: DRIFT_SHEET,
  offers: OFFERS_SHEET,
  vendors: VENDORS_SHEET,
  currencies: CURRENCIES_SHEET,
  onHand: ON_HAND_SHEET,
  order: ORDER_SHEET,
  rules: RULES_SHEET,
  settings: SETTINGS_SHEET,
  derating: DERATING_SHEET,
} as const;

type Sheets = typeof BOOK_SHEETS;

/** The workbook as our commands see it: each structured sheet as it stands, or null where there is none yet. */
export type Book = { readonly [K in keyof Sheets]: View<Sheets[K]> | null };

/**
 * Reads the structured sheets of the open workbook.
 *
 * @throws PartsError "conflict" where a sheet with one of our names holds something else.
 */
export async function openBook(host: Host): Promise<Book> {
  const found = Object.entries(BOOK_SHEETS).map(async ([key, sheet]) => [key, await openSheet(host, sheet)] as const);
  return Object.fromEntries(await Promise.all(found)) as Book;
}

/** The rows of a sheet as values; none where there is no such sheet. */
export const valuesOf = <S extends Sheets[keyof Sheets]>(view: View<S> | null) =>
  (view?.rows ?? []).map((row) => row.values);

/** The set that a row belongs to, by its short name. */
export function projectOf(book: Book, short: string | null): ProjectsRow | null {
  return valuesOf(book.projects).find((row) => row.short === short) ?? null;
}

/** The rules in force for a set: the sheets Rules and Settings, the set's own row over them. */
export function rulesOf(book: Book, short: string | null): RulesInForce {
  const project = projectOf(book, short);
  return rulesInForce(valuesOf(book.rules), valuesOf(book.settings), project, DEFAULTS_IN_FORCE);
}
