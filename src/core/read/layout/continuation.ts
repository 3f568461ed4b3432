import { designatorsOf } from "../records/designators.js";
import type { Role, RowCell } from "./row.js";

/** A row in the making: its lines and cells so far. */
export type OpenRow = {
  readonly lines: number[];
  cells: RowCell[];
  readonly section: string | null;
  readonly heading: string | null;
  readonly table: number;
  /** Where its first piece starts on the line, behind any box to tick, and where the text behind that one does. */
  readonly start: number;
  readonly textStart: number;
  /** Whether its first line held nothing but the designator. */
  readonly broken: boolean;
};

/** The text that a row has so far in one role. */
export const textIn = (cells: readonly RowCell[], role: Role) =>
  cells
    .filter((cell) => cell.role === role)
    .map((cell) => cell.text)
    .join(" ");

const OPEN_LIST = /(?:,|&|\bthru|\bto|\band|-)\s*$/i;
const REST_OF_LIST = /^(?:\s*[,&]?\s*[A-F](?:\s*[,&/]\s*[A-F])*,?\s*|\s*\d{1,3}(?:\s*,\s*\d{1,3})*,?\s*)$/;

/** Whether a designator cell goes on with the list of the row above: "C4A," / "C4B"; "C12A," / "B,C"; "R1 THRU" / "R12". */
export function goesOnWithList(above: string, text: string): boolean {
  if (/^(?:thru|to|and|&|-|–)$/i.test(text.trim())) return designatorsOf(above) !== null;
  if (!OPEN_LIST.test(above.trim())) return false;
  return REST_OF_LIST.test(text) || designatorsOf(text) !== null;
}

/** Whether what stands so far cannot be the end of an entry: it ends in a comma, a hyphen, or a bare number. */
export function isUnfinished(text: string): boolean {
  return /(?:[,;:\-–&±+]|\b(?:and|or|with|to|from|in|of|for|mit)|(?:^|[\s,])[\d.,/½¼]+)$/i.test(text.trim());
}

/** Whether a text reads as the rest of a sentence: it begins small, with a figure or a bracket. */
export const readsOn = (text: string) => /^[a-zäöü0-9.,(±+\-½¼)&%"]/.test(text.trim());

/**
 * Two lines of one cell joined: a word broken by a hyphen is mended (elect- / rolytic), 100,- / 000 too; figures keep
 * their hyphen (450- / 450-25).
 */
export function joinBroken(above: string, text: string): string {
  if (/,-$/.test(above) && /^\d/.test(text)) return above.slice(0, -1) + text;
  if (/\d-$/.test(above) && /^[\d.]/.test(text)) return above + text;
  if (/\p{L}-$/u.test(above) && /^\p{Ll}/u.test(text)) return above.slice(0, -1) + text;
  return above === "" ? text : `${above} ${text}`;
}

/** The cells of a row with those of its next line worked in, role by role. */
export function joinCells(above: readonly RowCell[], more: readonly RowCell[]): RowCell[] {
  const joined = [...above];
  for (const cell of more) {
    const at = joined.findIndex((own) => own.role === cell.role && own.unit === cell.unit);
    if (at < 0) joined.push(cell);
    else joined[at] = { ...joined[at]!, text: joinBroken(joined[at]!.text, cell.text) };
  }
  return joined;
}
