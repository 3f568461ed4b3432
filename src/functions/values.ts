import * as core from "../core/index.js";
import { allowed, anything, choice, size, sizeAndKind } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * What kind of part a value is a value of.
 * @customenum {string}
 */
export enum ValueKind {
  Resistor = "resistor",
  Capacitor = "capacitor",
  Inductor = "inductor",
}

/**
 * What a bare capital M means on the list in hand.
 * @customenum {string}
 */
export enum CapitalM {
  Million = "million",
  Thousand = "thousand",
}

/**
 * How a value is written.
 * @customenum {string}
 */
export enum ValueStyle {
  Modern = "modern",
  Code = "code",
  Old = "old",
}

const KINDS = ["resistor", "capacitor", "inductor"] as const;
const MEANINGS = ["million", "thousand"] as const;

/**
 * The number of ohms, farads or henries that a value stands for, read from old and new notation.
 * @customfunction READ_VALUE
 * @helpurl reference.html#READ_VALUE
 * @param value Text such as 470K, 4K7, .05 mfd or 250 mmf; a number stays as it is.
 * @param kind What kind of part it is, where the text has no unit.
 * @param capitalM What a bare capital M means on this list: million when left out.
 * @returns Ohms, farads or henries.
 * @example LUG.READ_VALUE("4K7") -> 4700
 */
export function readValue(value: unknown[][], kind?: ValueKind[][], capitalM?: CapitalM[][]): unknown[][] {
  return each(
    [anything(value), choice(kind, "kind", KINDS, undefined), choice(capitalM, "capitalM", MEANINGS, "million")],
    (cell, kind, capitalM) =>
      typeof cell === "number" ? cell : core.readValue(String(cell), { kind, capitalM }).value,
  );
}

/**
 * A value in ohms, farads or henries as a restorer writes it, such as 0.047 µF for 4.7E-08 farads.
 * @customfunction WRITE_VALUE
 * @helpurl reference.html#WRITE_VALUE
 * @param value A number in ohms, farads or henries, or text in any notation.
 * @param kind What kind of part it is; for a number a resistor when left out.
 * @param style modern (0.047 µF, when left out), code (47n, after IEC 60062) or old (.047 mfd).
 * @returns Text.
 * @example LUG.WRITE_VALUE(0.000000047, "capacitor") -> "0.047 µF"
 */
export function writeValue(value: unknown[][], kind?: ValueKind[][], style?: ValueStyle[][]): unknown[][] {
  return each(
    [
      sizeAndKind(value, "value"),
      choice(kind, "kind", KINDS, null),
      choice(style, "style", core.VALUE_STYLES, "modern"),
    ],
    (read, kind, style) => core.writeValue(read.value, kind ?? read.kind ?? "resistor", style),
  );
}

/**
 * The smallest and the largest value, in ohms, farads or henries, that a part may really have.
 * @customfunction TOL_RANGE
 * @helpurl reference.html#TOL_RANGE
 * @param value The printed value: a number in ohms, farads or henries, or text such as 10 k.
 * @param tolerance A ratio such as 10%, or text such as -20/+80 %, GMV or K.
 * @returns Two cells side by side, smallest and largest.
 * @example LUG.TOL_RANGE(10000, 0.1) -> {9000, 11000}
 */
export function tolRange(value: unknown[][], tolerance: unknown[][]): unknown[][] {
  return spill([size(value, "value"), allowed(tolerance, "tolerance")], (value, tolerance) => {
    const { min, max } = core.windowOf(value, tolerance);
    return [[min, max]];
  });
}

/**
 * Whether all that a new part may measure, in ohms, farads or henries, is what the old one was allowed to measure.
 * @customfunction TOL_INSIDE
 * @helpurl reference.html#TOL_INSIDE
 * @param newValue The new part's value: a number in ohms, farads or henries, or text.
 * @param newTolerance The new part's tolerance: a ratio such as 5%, or text.
 * @param oldValue The old part's value.
 * @param oldTolerance The old part's tolerance.
 * @returns TRUE or FALSE, then by what ratio the new part may fall below and rise above the old limits.
 * @example LUG.TOL_INSIDE("0.047 uF", "±20 %", "0.05 uF", "±20 %") -> {FALSE, 0.06, 0}
 */
export function tolInside(
  newValue: unknown[][],
  newTolerance: unknown[][],
  oldValue: unknown[][],
  oldTolerance: unknown[][],
): unknown[][] {
  return spill(
    [
      size(newValue, "newValue"),
      allowed(newTolerance, "newTolerance"),
      size(oldValue, "oldValue"),
      allowed(oldTolerance, "oldTolerance"),
    ],
    (value, tolerance, oldValue, oldTolerance) => {
      const { inside, below, above } = core.containment(
        core.windowOf(value, tolerance),
        core.windowOf(oldValue, oldTolerance),
      );
      return [[inside, below, above]];
    },
  );
}
