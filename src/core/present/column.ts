import type { Cell } from "../table.js";

/** Three quiet tints of a head: printed in the list, the user's, worked out. */
export type Tint = "printed" | "yours" | "worked";

/**
 * One column of a sheet, described once: how a value goes into its cell, how it is read back, and how it looks.
 *
 * `width` in pixels; `format` is a number format (`@` is text); `live` columns hold formulas until the set is closed; a
 * group of `folded` columns stands closed at first, all but its first column.
 */
export type Column<T> = {
  readonly head: string;
  readonly width: number;
  readonly format: string | null;
  readonly tint: Tint | null;
  readonly group: string | null;
  readonly folded: boolean;
  readonly live: boolean;
  readonly write: (value: T) => Cell;
  readonly read: (cell: Cell) => T | null;
};

/** What may be said about a column beside its kind and head. */
export type Look = Partial<Pick<Column<unknown>, "width" | "tint" | "group" | "folded" | "live">>;

const PLAIN = { width: 90, tint: null, group: null, folded: false, live: false } as const;

const isEmpty = (cell: Cell) => cell === null || cell === "";

/** A column of words. @example text("designator", { width: 80 }) */
export function text(head: string, look: Look = {}): Column<string> {
  return {
    ...PLAIN,
    ...look,
    head,
    format: "@",
    write: (value) => value,
    read: (cell) => (isEmpty(cell) ? null : String(cell).trim()),
  };
}

/**
 * A column of numbers in one unit, which the format shows. A cell whose text starts with a number ("350 V") reads as that number.
 *
 * @example number("watts", '0.0##" W"')
 */
export function number(head: string, format: string | null, look: Look = {}): Column<number> {
  return { ...PLAIN, width: 70, ...look, head, format, write: (value) => value, read: readNumber };
}

/** A column that says "yes" or nothing. */
export function yes(head: string, look: Look = {}): Column<boolean> {
  return {
    ...PLAIN,
    width: 60,
    ...look,
    head,
    format: "@",
    write: (value) => (value ? "yes" : ""),
    read: (cell) => (isEmpty(cell) ? null : cell === true || /^(yes|y|x|true|1)$/i.test(String(cell).trim())),
  };
}

/** A column that holds one of a few words; any other word reads as nothing. */
export function word<const W extends string>(head: string, words: readonly W[], look: Look = {}): Column<W> {
  return {
    ...text(head, look),
    write: (value) => value,
    read: (cell) => words.find((each) => each === String(cell ?? "").trim()) ?? null,
  };
}

function readNumber(cell: Cell): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  const found = /^\s*([-+]?\d+(?:[.,]\d+)?(?:e[-+]?\d+)?)\s*[^\d\s]*\s*$/i.exec(cell);
  return found ? Number(found[1]!.replace(",", ".")) : null;
}
