import type { Kind } from "../part.js";
import { figures } from "./figures.js";

/**
 * A value as lists of the 1930s to 1960s print it: `470K`, `2.2 meg`, `.047 mfd`, `250 mmf`.
 *
 * Common practice of the time: micromicrofarads below a thousandth of a microfarad, no nano, no nought before the point.
 *
 * @param value In ohms, farads or henries.
 * @example writeOld(4.7e-8, "capacitor") // ".047 mfd"
 */
export function writeOld(value: number, kind: Kind | null): string {
  if (kind === "capacitor") return value < 1e-9 ? counted(value, 1e-12, " mmf") : counted(value, 1e-6, " mfd");
  if (kind === "inductor") return value < 1 ? counted(value, 1e-3, " mh") : counted(value, 1, " h");
  if (value >= 1e6) return counted(value, 1e6, " meg");
  return value >= 1000 ? counted(value, 1000, "K") : counted(value, 1, kind === null ? "" : " ohms");
}

function counted(value: number, unit: number, name: string): string {
  return figures(value / unit).replace(/^0\./, ".") + name;
}
