import type { Tolerance } from "../../part.js";
import { PartsError } from "../../problem.js";
import {
  CHANGES,
  COEFFICIENT_LIMITS,
  HIGHEST_CELSIUS,
  LOWEST_CELSIUS,
  MULTIPLIERS,
  SIGNIFICANT,
} from "./temperatureTables.js";

/** What a temperature code says: a straight coefficient (class I), or the change over a range (class II). */
export type TemperatureCode =
  | { readonly class: "I"; readonly ppmPerKelvin: number; readonly ppmLimits: number | null }
  | { readonly class: "II"; readonly fromCelsius: number; readonly toCelsius: number; readonly change: Tolerance };

const HOW = "Write it like NP0, N750, P100, U2J or X7R.";

/**
 * What the temperature code of a ceramic capacitor says: `N750`, `U2J` (both class I), `X7R` (class II).
 *
 * C0G is written with a nought and often with the letter O; NP0 is the same. The multiplier figures 4 and 5 of class I are
 * not read, since published tables disagree on them.
 *
 * @returns Coefficients in millionths for each kelvin; changes as ratios.
 * @throws PartsError "unreadable" for anything else.
 * @see EIA-198; TI SLAA701B
 * @example readTemperatureCode("U2J") // { class: "I", ppmPerKelvin: -750, ppmLimits: 120 }
 */
export function readTemperatureCode(text: string): TemperatureCode {
  const code = text.trim().toUpperCase();
  if (/^NP[0O]$/.test(code)) return { class: "I", ppmPerKelvin: 0, ppmLimits: null };
  const plain = /^([NP])(\d{2,4})$/.exec(code);
  if (plain) return { class: "I", ppmPerKelvin: Number(plain[2]) * (plain[1] === "N" ? -1 : 1), ppmLimits: null };
  const [first = "", figure = "", last = "", more] = [...code.replace(/^C0?O?G$/, "C0G")];
  const found = more === undefined ? (classTwo(first, figure, last) ?? classOne(first, figure, last)) : null;
  if (!found) throw new PartsError("unreadable", text, HOW);
  return found;
}

function classTwo(first: string, figure: string, last: string): TemperatureCode | null {
  const [from, to, change] = [LOWEST_CELSIUS[first], HIGHEST_CELSIUS[figure], CHANGES[last]];
  if (from === undefined || to === undefined || change === undefined) return null;
  return { class: "II", fromCelsius: from, toCelsius: to, change };
}

function classOne(first: string, figure: string, last: string): TemperatureCode | null {
  const [significant, multiplier, limits] = [SIGNIFICANT[first], MULTIPLIERS[figure], COEFFICIENT_LIMITS[last]];
  if (significant === undefined || multiplier === undefined || limits === undefined) return null;
  return { class: "I", ppmPerKelvin: Math.round(significant * multiplier * 10) / 10 || 0, ppmLimits: limits };
}
