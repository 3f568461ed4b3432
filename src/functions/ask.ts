import { type Cell, PartsError } from "../core/index.js";
import { type Ask, BLANK } from "./cell.js";

/**
 * Readers of arguments. Each takes the argument, its name (for the message when it can't be read) and, where the
 * argument may be left out, what then stands for it. Without that, a blank makes the answer blank.
 */
type Fallback<F> = readonly [fallback?: F];

const isEmpty = (cell: Cell) => cell === null || (typeof cell === "string" && cell.trim() === "");
const isEmptyOrZero = (cell: Cell) => cell === 0 || isEmpty(cell);

function ask<T, F>(given: unknown, rest: Fallback<F>, read: (cell: Cell) => T, isBlank = isEmpty): Ask<T | F> {
  const nothing = rest.length > 0 ? (rest[0] as F) : BLANK;
  return { given, read: (cell) => (isBlank(cell) ? nothing : read(cell)) };
}

/** Any number, such as a reading, which may be 0. */
export function amount<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => numberIn(cell, name));
}

/** A number above zero, such as watts. A 0 counts as blank, for some hosts hand an empty cell over as 0. */
export function positive<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => aboveZero(numberIn(cell, name), name), isEmptyOrZero);
}

/** A count from 1 up, such as how many answers to list. */
export function count<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => whole(aboveZero(numberIn(cell, name), name), name), isEmptyOrZero);
}

/** Text as it stands. */
export function text<F = never>(given: unknown, ...rest: Fallback<F>): Ask<string | F> {
  return ask(given, rest, (cell) => String(cell).trim());
}

/** One of the names listed, whatever its case. */
export function choice<N extends string, F = never>(
  given: unknown,
  name: string,
  names: readonly N[],
  ...rest: Fallback<F>
): Ask<N | F> {
  return ask(given, rest, (cell) => {
    const asked = String(cell).trim().toLowerCase();
    const found = names.find((known) => known.toLowerCase() === asked);
    if (found === undefined) throw new PartsError("unknown-name", cell, `Give one of: ${names.join(", ")}.`, name);
    return found;
  });
}

function numberIn(cell: Cell, name: string): number {
  const found = typeof cell === "string" ? Number(cell.trim()) : cell;
  if (typeof found === "number" && Number.isFinite(found)) return found;
  throw new PartsError("unreadable", cell, "Give a plain number.", name);
}

function aboveZero(found: number, name: string): number {
  if (found > 0) return found;
  throw new PartsError("out-of-range", found, "Give a number above 0.", name);
}

function whole(found: number, name: string): number {
  if (Number.isInteger(found)) return found;
  throw new PartsError("out-of-range", found, "Give a whole number.", name);
}
