import { PartsError } from "../../problem.js";
import { timesPowerOfTen } from "../powersOfTen.js";
import { type Colour, figureOf } from "./colours.js";
import { type ColourTable, MULTIPLIER_POWERS } from "./colourTables.js";

/**
 * The number that figure bands and a multiplier band make; no preferred value is asked of it.
 *
 * @param unitPower Power of ten of the unit the code counts in: 0 for ohms, -12 for picofarads.
 * @throws PartsError "unreadable" when a colour is no figure or no multiplier.
 * @example bandValue(["yellow", "violet"], "orange", 0) // 47_000
 */
export function bandValue(
  figureColours: readonly Colour[],
  multiplier: Colour,
  unitPower: number,
  powers: ColourTable<number> = MULTIPLIER_POWERS,
): number {
  const whole = figureColours.reduce((sum, colour) => {
    const figure = figureOf(colour);
    if (figure === null) throw new PartsError("unreadable", colour, "This band is a figure: black to white.");
    return 10 * sum + figure;
  }, 0);
  const power = powers[multiplier];
  if (power === undefined) {
    throw new PartsError("unreadable", multiplier, `The multiplier is one of ${Object.keys(powers).join(", ")}.`);
  }
  return timesPowerOfTen(whole, power + unitPower);
}

/**
 * What a colour means in a table, for a band that must mean something.
 *
 * @throws PartsError "unreadable" when the table lacks the colour.
 */
export function meaningOf<T>(colour: Colour, table: ColourTable<T>, band: string): T {
  const found = table[colour];
  if (found === undefined) {
    throw new PartsError("unreadable", colour, `The ${band} band is one of ${Object.keys(table).join(", ")}.`);
  }
  return found;
}
