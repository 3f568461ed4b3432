/** TABLE: the classes of capacitors that may stand at the line. */
import { PartsError } from "../problem.js";

/** Where a capacitor stands at the line. */
export const LINE_PLACES = ["line to line", "line to metal", "line to hand"] as const;
export type LinePlace = (typeof LINE_PLACES)[number];

/** Which classes serve at a place, best first, and why. */
export type LineClass = {
  readonly classes: readonly string[];
  readonly refused: readonly string[];
  readonly because: string;
};

const PLACES: Readonly<Record<LinePlace, LineClass>> = {
  "line to line": {
    classes: ["X2", "X1", "Y2", "Y1"],
    refused: [],
    because: "It may blow a fuse but gives no shock; a Y part may stand in for an X part.",
  },
  "line to metal": {
    classes: ["Y2", "Y1"],
    refused: ["X1", "X2"],
    because: "When it fails the chassis is at the line: only a Y part may bridge basic insulation, never an X part.",
  },
  "line to hand": {
    classes: ["Y1", "Y2 + Y2"],
    refused: ["Y2", "X1", "X2"],
    because: "Nothing else stands between line and hand: class Y1, or two equal Y2 in series.",
  },
};

/**
 * The classes of capacitor that serve at a place at the line, and those that do not.
 *
 * The class says what the part was tested for. Local codes decide what may be connected to the line, and by whom.
 *
 * @see IEC 60384-14: Y1 bridges double or reinforced insulation, Y2 basic insulation
 * @throws PartsError "unknown-name" for another place.
 * @example xyClass("line to metal").classes // ["Y2", "Y1"]
 */
export function xyClass(place: string): LineClass {
  const found = LINE_PLACES.find((known) => known === place.trim().toLowerCase());
  if (!found) throw new PartsError("unknown-name", place, `A place at the line is one of: ${LINE_PLACES.join("; ")}.`);
  return PLACES[found];
}

/** Peak volts of the impulse test up to 1 µF; a larger X1, X2 or Y2 part is tested with less. */
const IMPULSE_VOLTS: Readonly<Record<string, readonly [volts: number, lessWhenLarge: boolean]>> = {
  X1: [4000, true],
  X2: [2500, true],
  Y1: [8000, false],
  Y2: [5000, true],
  Y4: [2500, false],
};

/**
 * The impulse a safety capacitor is tested with.
 *
 * Above 1 µF X1, X2 and Y2 are tested with less: divided by the root of the microfarads.
 *
 * @returns Volts peak; null for X3 and Y3, which have no such test.
 * @see IEC 60384-14
 * @throws PartsError "unknown-name" for another class.
 * @example impulseVolts({ safetyClass: "X2", farads: 2.2e-6 }) // 1685
 */
export function impulseVolts(part: { readonly safetyClass: string; readonly farads: number }): number | null {
  const name = part.safetyClass.trim().toUpperCase();
  if (name === "X3" || name === "Y3") return null;
  const found = IMPULSE_VOLTS[name];
  if (!found) throw new PartsError("unknown-name", part.safetyClass, "A class is one of X1, X2, X3, Y1, Y2, Y3, Y4.");
  const [volts, lessWhenLarge] = found;
  const microfarads = part.farads / 1e-6;
  return lessWhenLarge && microfarads > 1 ? volts / Math.sqrt(microfarads) : volts;
}
