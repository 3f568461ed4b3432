import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { figures } from "./figures.js";

type Scale = readonly (readonly [letter: string, unit: number])[];

const OHMS: Scale = [
  ["G", 1e9],
  ["M", 1e6],
  ["K", 1e3],
  ["R", 1],
];
/** Without the code's m for millifarads: in this trade an m on a capacitor is read as micro. 1500 µF is 1500µ. */
const FARADS: Scale = [
  ["µ", 1e-6],
  ["n", 1e-9],
  ["p", 1e-12],
];

/**
 * A value in the letter code: the letter of the multiplier stands where the decimal point would: `4K7`, `R47`, `4n7`.
 *
 * @param value In ohms or farads.
 * @param kind A capacitor, or anything counted in ohms; the code knows no inductors.
 * @throws PartsError "conflict" for an inductor.
 * @see IEC 60062
 * @example writeCode(4_700, "resistor") // "4K7"
 */
export function writeCode(value: number, kind: Kind | null): string {
  if (kind === "inductor") {
    throw new PartsError("conflict", "The letter code and an inductor", "IEC 60062 is for resistors and capacitors.");
  }
  const scale = kind === "capacitor" ? FARADS : OHMS;
  const [letter, unit] = scale.find(([, step]) => value >= step * (1 - 1e-12)) ?? scale[scale.length - 1]!;
  const [whole, fraction = ""] = figures(value / unit).split(".");
  return `${whole === "0" ? "" : whole}${letter}${fraction}`;
}
