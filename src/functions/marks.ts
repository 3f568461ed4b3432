import * as core from "../core/index.js";
import { allowed, choice, size, text } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * What kind of part is marked.
 * @customenum {string}
 */
export enum MarkedKind {
  Resistor = "resistor",
  Capacitor = "capacitor",
}

/**
 * Whose letters they are; the same letter means different tolerances in different systems.
 * @customenum {string}
 */
export enum LetterSystem {
  Iec = "IEC",
  Eia = "EIA",
  Erie = "ERIE",
}

/**
 * How a value is marked on a part.
 * @customenum {string}
 */
export enum MarkStyle {
  ThreeFigures = "3 figures",
  FourFigures = "4 figures",
  Letter = "letter",
}

const KINDS = ["resistor", "capacitor"] as const;

/**
 * The value in ohms or farads that the figures and letters printed on a part say, with its tolerance.
 * @customfunction CODE_DECODE
 * @helpurl reference.html#CODE_DECODE
 * @param mark What is printed on the part, such as 104K, 4702, 4K7, R47 or 470JN, or a military type designation such as RC20BF474K.
 * @param kind What kind of part it is: capacitor when left out.
 * @param system Whose letters they are: IEC (when left out), EIA, or ERIE for old tubulars, whose figures are picofarads as they stand.
 * @returns Ohms or farads, the tolerance, and in words whatever else is known.
 * @example LUG.CODE_DECODE("104K") -> {0.0000001, "±10 %", ""}
 */
export function codeDecode(mark: unknown[][], kind?: MarkedKind[][], system?: LetterSystem[][]): unknown[][] {
  return spill(
    [text(mark), choice(kind, "kind", KINDS, "capacitor"), choice(system, "system", core.LETTER_SYSTEMS, "IEC")],
    (mark, kind, system) => {
      const { value, tolerance, ppmPerKelvin, notes } = core.printedMark(mark, kind, system);
      const words = [...(ppmPerKelvin === null ? [] : [`${ppmPerKelvin} ppm/K`]), ...notes].join("; ");
      return [[value, tolerance ? core.writeTolerance(tolerance) : "", words]];
    },
  );
}

/**
 * The marking that a part of so many ohms or farads carries, with its tolerance letter where a tolerance is given.
 * @customfunction CODE_ENCODE
 * @helpurl reference.html#CODE_ENCODE
 * @param value The value: a number in ohms or farads, or text such as 0.1 uF.
 * @param kind What kind of part it is: capacitor when left out.
 * @param tolerance A ratio such as 10%, or text; no letter when left out.
 * @param style 3 figures (when left out), 4 figures, or letter (4K7, 4n7, after IEC 60062).
 * @param system Whose letters to use: IEC (when left out), EIA or ERIE.
 * @returns The marking, as text.
 * @example LUG.CODE_ENCODE("0.1 uF", "capacitor", 10%) -> "104K"
 */
export function codeEncode(
  value: unknown[][],
  kind?: MarkedKind[][],
  tolerance?: unknown[][],
  style?: MarkStyle[][],
  system?: LetterSystem[][],
): unknown[][] {
  return each(
    [
      size(value, "value"),
      choice(kind, "kind", KINDS, "capacitor"),
      allowed(tolerance, "tolerance", null),
      choice(style, "style", core.MARK_STYLES, "3 figures"),
      choice(system, "system", core.LETTER_SYSTEMS, "IEC"),
    ],
    (value, kind, tolerance, style, system) => core.encodeMark({ value, kind, tolerance }, style, system),
  );
}
