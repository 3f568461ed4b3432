import type { Tolerance } from "../../part.js";
import { PartsError } from "../../problem.js";
import { type LetterSystem, letterOfTolerance } from "../toleranceLetters.js";
import { writeCode } from "../writeCode.js";

/** How a value is marked: figures with a power of ten, or the letter code of IEC 60062. */
export const MARK_STYLES = ["3 figures", "4 figures", "letter"] as const;
export type MarkStyle = (typeof MARK_STYLES)[number];

/**
 * The marking of a resistor or capacitor, with its tolerance letter where one is given.
 *
 * @param part Ohms or farads, and the tolerance or null.
 * @throws PartsError "nothing-fits" when the style has no room for the value's figures or no letter for the tolerance,
 * "conflict" when the letter would be read as a multiplier (473K).
 * @see IEC 60062; EIA for three figures
 * @example encodeMark({ value: 1e-7, kind: "capacitor", tolerance: { minus: 0.1, plus: 0.1 } }, "3 figures") // "104K"
 */
export function encodeMark(
  part: { readonly value: number; readonly kind: "resistor" | "capacitor"; readonly tolerance?: Tolerance | null },
  style: MarkStyle,
  system: LetterSystem = "IEC",
): string {
  const mark = style === "letter" ? writeCode(part.value, part.kind) : inFigures(part.value, part.kind, style);
  if (!part.tolerance) return mark;
  const letter = letterOfTolerance(part.tolerance, system);
  if (!letter) throw new PartsError("nothing-fits", "this tolerance", `${system} has no letter for it.`);
  if (part.kind === "resistor" && style !== "letter" && "RKMG".includes(letter)) {
    throw new PartsError(
      "conflict",
      `${mark} and ${letter}`,
      `${mark}${letter} would be read as a multiplier: use "letter".`,
    );
  }
  return mark + letter;
}

function inFigures(value: number, kind: "resistor" | "capacitor", style: "3 figures" | "4 figures"): string {
  const count = style === "3 figures" ? 2 : 3;
  const counted = Number((kind === "capacitor" ? value / 1e-12 : value).toPrecision(12));
  const power = Math.floor(Math.log10(counted)) - (count - 1);
  const whole = Number((counted / 10 ** power).toPrecision(12));
  const lowest = kind === "capacitor" ? -2 : 0;
  if (!Number.isInteger(whole) || power < lowest || power > (kind === "capacitor" ? 7 : 9)) {
    throw new PartsError("nothing-fits", `this value in ${style}`, "Use the letter code, or more figures.");
  }
  return `${whole}${power < 0 ? power + 10 : power}`;
}
