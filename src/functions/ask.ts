import {
  type Cell,
  type Kind,
  type Measure,
  PartsError,
  readMeasure,
  readTolerance,
  readValue,
  type Tolerance,
} from "../core/index.js";
import { type Ask, BLANK, plainCell } from "./cell.js";

/**
 * Readers of arguments. Each takes the argument, its name (for the message when it can't be read) and, where the
 * argument may be left out, what then stands for it. Without that, a blank makes the answer blank.
 */
type Fallback<F> = readonly [fallback?: F];

const isEmpty = (cell: Cell) => cell === null || (typeof cell === "string" && cell.trim() === "");
const isEmptyOrZero = (cell: Cell) => cell === 0 || isEmpty(cell);

function ask<T, F>(given: unknown, rest: Fallback<F>, read: (cell: Cell) => T, isBlank = isEmpty): Ask<T | F> {
  const nothing = rest.length > 0 ? (rest[0] as F) : BLANK;
  return {
    given,
    read: (found) => {
      const cell = plainCell(found);
      return isBlank(cell) ? nothing : read(cell);
    },
  };
}

/** Any number, such as a reading, which may be 0. */
export function amount<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => numberIn(cell, name));
}

/** A value of a part in base units, from a number or from text such as 4K7 or .05 mfd. A 0 counts as blank. */
export function size<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => sizeIn(cell, name).value, isEmptyOrZero);
}

/** A value together with the kind of part that its unit tells; null where it tells none. */
export function sizeAndKind<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<Sized | F> {
  return ask(given, rest, (cell) => sizeIn(cell, name), isEmptyOrZero);
}

/** A value and the kind of part it is a value of. */
export type Sized = { readonly value: number; readonly kind: Kind | null };

/** A rating above zero in base units, from a number or from text such as 1/2 W or 400 V. A 0 counts as blank. */
export function rating<F = never>(
  given: unknown,
  name: string,
  measure: Measure,
  ...rest: Fallback<F>
): Ask<number | F> {
  return ask(given, rest, (cell) => aboveZero(measureIn(cell, name, measure), name), isEmptyOrZero);
}

/** Any amount in base units, from a number or from text such as -12 V; 0 is an amount. */
export function measured<F = never>(
  given: unknown,
  name: string,
  measure: Measure,
  ...rest: Fallback<F>
): Ask<number | F> {
  return ask(given, rest, (cell) => measureIn(cell, name, measure));
}

/** A tolerance from a ratio (0.1, which a cell may show as 10 %) or from text such as -20/+80 %. */
export function allowed<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<Tolerance | F> {
  return ask(given, rest, (cell) => toleranceIn(cell, name));
}

/** A number above zero, such as watts. A 0 counts as blank, for some hosts hand an empty cell over as 0. */
export function positive<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => aboveZero(numberIn(cell, name), name), isEmptyOrZero);
}

/** A count from 1 up, such as how many answers to list. */
export function count<F = never>(given: unknown, name: string, ...rest: Fallback<F>): Ask<number | F> {
  return ask(given, rest, (cell) => whole(aboveZero(numberIn(cell, name), name), name), isEmptyOrZero);
}

/** Whatever stands in the cell. */
export function anything<F = never>(given: unknown, ...rest: Fallback<F>): Ask<Cell | F> {
  return ask(given, rest, (cell) => cell);
}

/** Text as it stands. */
export function text<F = never>(given: unknown, ...rest: Fallback<F>): Ask<string | F> {
  return ask(given, rest, (cell) => String(cell).trim());
}

/** One of the names listed, whatever its case. */
export function choice<N extends string, const F = never>(
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

function sizeIn(cell: Cell, name: string): Sized {
  if (typeof cell === "string") return at(name, () => readValue(cell));
  return { value: aboveZero(numberIn(cell, name), name), kind: null };
}

function measureIn(cell: Cell, name: string, measure: Measure): number {
  const found = typeof cell === "string" ? at(name, () => readMeasure(cell, measure)) : numberIn(cell, name);
  if (measure === "farad" && found >= ONE_FARAD)
    throw new PartsError("out-of-range", `${found} farads`, "Microfarads want their unit: 40 µF, or 0.00004.", name);
  return found;
}

function toleranceIn(cell: Cell, name: string): Tolerance {
  if (typeof cell === "string") return at(name, () => readTolerance(cell));
  const ratio = numberIn(cell, name);
  if (ratio >= 0 && ratio < 1) return { minus: ratio, plus: ratio };
  throw new PartsError("out-of-range", ratio, "Write 10% or 0.1, or -20/+80 % as text.", name);
}

/** The same problem, with the argument's name where it stood. */
function at<T>(name: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof PartsError)) throw error;
    throw new PartsError(error.problem.code, error.problem.given, error.problem.wanted, name);
  }
}

/** No capacitor of a set has so much: whoever gives it means microfarads. */
const ONE_FARAD = 1;

/** Beyond this nothing is meant, and a square or a product of such numbers would be infinite. */
const MOST = 1e30;

function numberIn(cell: Cell, name: string): number {
  const found = typeof cell === "string" ? Number(cell.trim()) : cell;
  if (typeof found !== "number" || !Number.isFinite(found))
    throw new PartsError("unreadable", cell, "Give a plain number.", name);
  if (Math.abs(found) <= MOST) return found;
  throw new PartsError("out-of-range", found, "No part and no circuit has so much.", name);
}

function aboveZero(found: number, name: string): number {
  if (found > 0) return found;
  throw new PartsError("out-of-range", found, "Give a number above 0.", name);
}

function whole(found: number, name: string): number {
  if (Number.isInteger(found)) return found;
  throw new PartsError("out-of-range", found, "Give a whole number.", name);
}
