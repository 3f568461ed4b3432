import type { Kind } from "../part.js";
import { decodeMark, type Mark } from "../quantity/marking/decodeMark.js";
import type { LetterSystem } from "../quantity/toleranceLetters.js";
import { wattsText } from "../rate/wattsText.js";
import { type DecodedCode, decodeCode } from "../read/words/codes.js";

/**
 * What is printed on a part in figures and letters: a marking, or the type designation of a military specification, which
 * says for itself what kind of part it is.
 *
 * @throws PartsError as `decodeMark` does.
 * @see IEC 60062; MIL-R-11 and its like for designations, from memory
 * @example printedMark("RC20BF474K", "capacitor", "IEC").value // 470000
 */
export function printedMark(text: string, kind: "resistor" | "capacitor", system: LetterSystem): Mark {
  const code = decodeCode(text.trim());
  if (code === null || code.value === null || !isMarked(code.kind)) return decodeMark(text, kind, system);
  return {
    value: code.value,
    unit: code.kind === "resistor" ? "ohm" : "farad",
    tolerance: code.tolerance,
    ppmPerKelvin: null,
    notes: [inWords(code)],
  };
}

const isMarked = (kind: Kind) => kind === "resistor" || kind === "capacitor";

function inWords({ kind, watts, construction, dielectric }: DecodedCode): string {
  const words = [watts === null ? "" : wattsText(watts), construction ?? dielectric ?? "", kind];
  return `type designation: ${words.filter(Boolean).join(" ")}`;
}
