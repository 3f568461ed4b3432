import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { figures } from "./figures.js";
import { writeCode } from "./writeCode.js";
import { writeOld } from "./writeOld.js";

/** The notations a value can be written in: today's, the letter code of IEC 60062, and that of old lists. */
export const VALUE_STYLES = ["modern", "code", "old"] as const;
export type ValueStyle = (typeof VALUE_STYLES)[number];

const MILLION = 1e6;

/**
 * A value as a restorer writes it: `470 k`, `0.047 µF`, `220 pF`; or `470K` (code), or `.047 mfd` (old).
 *
 * Resistors stand in Ω, k and M; capacitors in µF from a thousandth up and in pF below; inductors in µH, mH and H. Six
 * figures are kept, and what is written is read back as the same value.
 *
 * @param value In base units, from 1e-15 to 1e15.
 * @param kind Decides the unit; null writes a bare number with its prefix.
 * @throws PartsError "out-of-range" for a value that is not positive or beyond these limits.
 * @see IEC 60062 for "code"
 * @example writeValue(4.7e-8, "capacitor") // "0.047 µF"
 */
export function writeValue(value: number, kind: Kind | null, style: ValueStyle = "modern"): string {
  if (!(value >= 1e-15 && value <= 1e15)) {
    throw new PartsError("out-of-range", value, "A value that can be written lies between 1e-15 and 1e15.");
  }
  const rounded = Number(value.toPrecision(6));
  if (style === "code") return writeCode(rounded, kind);
  return style === "old" ? writeOld(rounded, kind) : writeModern(rounded, kind);
}

function writeModern(value: number, kind: Kind | null): string {
  if (kind === "capacitor") return value < 1e-9 ? plain(value, 1e-12, "pF") : plain(value, 1e-6, "µF");
  if (kind === "inductor") {
    if (value < 1e-3) return plain(value, 1e-6, "µH");
    return value < 1 ? plain(value, 1e-3, "mH") : plain(value, 1, "H");
  }
  if (value >= MILLION) return plain(value, MILLION, "M");
  return value >= 1000 ? plain(value, 1000, "k") : plain(value, 1, kind === null ? "" : "Ω");
}

function plain(value: number, unit: number, name: string): string {
  return `${figures(value / unit)} ${name}`.trim();
}
