import { attempt } from "../problem.js";
import type { Measure } from "../quantity/notation/units.js";
import { readMeasure } from "../quantity/readMeasure.js";
import { nameSaid, type Words, wordFor } from "../rules/ruleWords.js";
import type { Cell } from "../table.js";

/** Three quiet tints of a head: printed in the list, the user's, worked out. */
export type Tint = "printed" | "yours" | "worked";

/**
 * One column of a sheet, described once: how a value goes into its cell, how it is read back, and how it looks.
 *
 * `width` in pixels; `format` is a number format (`@` is text); `live` columns hold formulas until the set is closed; a
 * group of `folded` columns stands closed at first, all but its first column. `words` are all that a cell may hold, where it
 * holds one of a few; `wants` says what a cell has to hold, for one that can't be read.
 */
export type Column<T> = {
  readonly head: string;
  readonly width: number;
  readonly format: string | null;
  readonly tint: Tint | null;
  readonly group: string | null;
  readonly folded: boolean;
  readonly live: boolean;
  readonly words: readonly string[] | null;
  readonly wants: string;
  readonly write: (value: T) => Cell;
  readonly read: (cell: Cell) => T | null;
};

/** What may be said about a column beside its kind and head. */
export type Look = Partial<Pick<Column<unknown>, "width" | "tint" | "group" | "folded" | "live">>;

const PLAIN = { width: 90, tint: null, group: null, folded: false, live: false, words: null, wants: "" } as const;

const oneOf = (words: readonly string[]) => `Write one of: ${words.join("; ")}.`;

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
  const wants = "Write a number.";
  return { ...PLAIN, width: 70, ...look, head, format, wants, write: (value) => value, read: readNumber };
}

/** What an amount is measured in, and what one of the column's own units is in base units: a millimetre is 0.001 metres. */
export type OwnUnit = { readonly measure: Measure; readonly name: string; readonly inBase: number };

/**
 * A column of amounts in one unit, which the format shows; a text with a unit of its own is turned into it ("1.6 kV", "3/8 in").
 *
 * @example amount("volts", VOLTS, { measure: "volt", name: "V", inBase: 1 }).read("1.6 kV") // 1600
 */
export function amount(
  head: string,
  format: string,
  { measure, name, inBase }: OwnUnit,
  look: Look = {},
): Column<number> {
  const read = (cell: Cell): number | null => {
    if (typeof cell !== "string" || /^[-+\d.,\s]*$/.test(cell)) return readNumber(cell);
    const found = attempt(() => readMeasure(cell, measure));
    return found === null ? null : Number((found / inBase).toPrecision(12));
  };
  return { ...number(head, format, look), wants: `Write a number in ${name}, or one with its unit.`, read };
}

/** A column of temperatures in degrees Celsius; one that says F is turned into them. */
export function degrees(head: string, format: string, look: Look = {}): Column<number> {
  const read = (cell: Cell): number | null => {
    const [, figure, scale = "C"] = /^\s*([-+]?[\d.,]+)\s*°?\s*([CF])?\s*$/i.exec(String(cell ?? "")) ?? [];
    const number = figure === undefined ? null : readNumber(figure);
    return number !== null && scale.toUpperCase() === "F" ? Math.round(((number - 32) / 1.8) * 10) / 10 : number;
  };
  return { ...number(head, format, look), wants: "Write a number in °C, or one with F.", read };
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
    words,
    wants: oneOf(words),
    write: (value) => value,
    read: (cell) => words.find((each) => each === String(cell ?? "").trim()) ?? null,
  };
}

/** A column that holds one of a few names as the words of the screen; the names themselves are read as well. */
export function named<Name extends string>(head: string, words: Words<Name>, look: Look = {}): Column<Name> {
  const all = Object.values<string>(words);
  return {
    ...text(head, look),
    words: all,
    wants: oneOf(all),
    write: (name) => words[name],
    read: (cell) => nameSaid(words, String(cell ?? "")),
  };
}

/** A column that holds a figure, or one of a few names as the words of the screen; it is read as text: "630", "warmup_peak". */
export function figureOrNamed(head: string, words: Words, look: Look = {}): Column<string> {
  return {
    ...text(head, look),
    wants: `Write a number, or one of: ${Object.values(words).join("; ")}.`,
    write: (name) => wordFor(words, name),
    read: (cell) => {
      if (isEmpty(cell)) return null;
      const figure = Number(cell);
      return Number.isNaN(figure) ? nameSaid(words, String(cell)) : String(figure);
    },
  };
}

/** How several names stand in one cell: what is written between them, and what may be, the first that gives known names. */
export type Between = { readonly write: string; readonly read: readonly RegExp[] };

/**
 * A column of several names as the words of the screen; it is read as the names with the same between them, or as nothing
 * where one of the words means none.
 */
export function severalNamed(head: string, words: Words, between: Between, look: Look = {}): Column<string> {
  const some = Object.values(words).slice(0, 2);
  return {
    ...text(head, look),
    wants: `Write one or several with "${between.write.trim()}" between, such as ${some.join(between.write)}.`,
    write: (names) =>
      names
        .split(between.write)
        .map((name) => wordFor(words, name))
        .join(between.write),
    read: (cell) => {
      const split = between.read.map((each) =>
        String(cell ?? "")
          .split(each)
          .filter(Boolean),
      );
      const read = split.map((texts) => texts.map((text) => nameSaid(words, text)));
      return read.find((names) => names.length > 0 && !names.includes(null))?.join(between.write) ?? null;
    },
  };
}

function readNumber(cell: Cell): number | null {
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : null;
  if (typeof cell !== "string") return null;
  const found = /^\s*([-+]?\d+(?:[.,]\d+)?(?:e[-+]?\d+)?)\s*[^\d\s]*\s*$/i.exec(cell);
  return found ? Number(found[1]!.replace(",", ".")) : null;
}
