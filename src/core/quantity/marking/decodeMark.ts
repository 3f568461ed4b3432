import type { Tolerance } from "../../part.js";
import { PartsError } from "../../problem.js";
import { timesPowerOfTen } from "../powersOfTen.js";
import { readValue } from "../readValue.js";
import { type LetterSystem, toleranceOfLetter } from "../toleranceLetters.js";
import { ERIE_PPM } from "./temperatureTables.js";

/** What is printed on a part in figures and letters; what it does not say is null. */
export type Mark = {
  readonly value: number;
  readonly unit: "ohm" | "farad";
  readonly tolerance: Tolerance | null;
  readonly ppmPerKelvin: number | null;
  readonly notes: readonly string[];
};

const HOW = "Write it like 104, 104K, 4702, 4K7, R47, 4n7 or 229.";
const PICO = -12;

/** Figures, a power of ten, and a tolerance letter; on a resistor R, K, M and G are never that: 470K is 470 kilohms. */
const OHM_FIGURES = /^(\d{2,3})(\d)([A-FHJLNP-QS-Z])?$/;
const FARAD_FIGURES = /^(\d{2,3})(\d)([A-Z])?$/;

/**
 * What the marking of a resistor or capacitor says: `104K`, `4702`, `4K7`, `R47`, `4n7J`, `229`.
 *
 * Three or four figures are figures and a power of ten, of ohms or of picofarads. On capacitors 8 and 9 as the last figure
 * mean 0.01 and 0.1. In the old ERIE system figures are picofarads as they stand, K means thousand, and a second letter
 * gives the temperature coefficient: `470JN` is 470 pF, 5 %, -750 ppm.
 *
 * @param system Whose letters they are; the same letter means different tolerances in different systems.
 * @throws PartsError "unreadable" when no value can be made out, "unknown-name" for a tolerance letter the system lacks.
 * @see IEC 60062; EIA for three figures
 * @example decodeMark("104K", "capacitor").value // 1e-7
 */
export function decodeMark(text: string, kind: "resistor" | "capacitor", system: LetterSystem = "IEC"): Mark {
  const mark = text.trim();
  if (system === "ERIE" && kind === "capacitor") return erieMark(mark);
  const figures = (kind === "resistor" ? OHM_FIGURES : FARAD_FIGURES).exec(mark);
  const value = figures ? byPower(Number(figures[1]), Number(figures[2]), kind) : lettered(mark, kind);
  const letter = figures ? figures[3] : toleranceLetter(mark);
  return { ...valueMark(value, kind), tolerance: toleranceFor(letter, value, kind, system) };
}

function byPower(figures: number, power: number, kind: "resistor" | "capacitor"): number {
  if (kind === "resistor") return timesPowerOfTen(figures, power);
  return timesPowerOfTen(figures, (power >= 8 ? power - 10 : power) + PICO);
}

/** 4K7, R47, 47n and the like; a tolerance letter may follow the figures. */
function lettered(mark: string, kind: "resistor" | "capacitor"): number {
  if (!/^\d*[RKMGpnuµμmF]\d*[A-Z]?$/.test(mark)) throw new PartsError("unreadable", mark, HOW);
  const letter = toleranceLetter(mark);
  return readValue(letter ? mark.slice(0, -1) : mark, { kind }).value;
}

/** The last letter when another letter already stands for the point: 4K7J. */
const toleranceLetter = (mark: string) => /^\d*[RKMGpnuµμmF]\d*([A-Z])$/.exec(mark)?.[1];

function toleranceFor(letter: string | undefined, value: number, kind: string, system: LetterSystem): Tolerance | null {
  return letter ? toleranceOfLetter(letter, system, kind === "capacitor" ? value : null) : null;
}

const valueMark = (value: number, kind: "resistor" | "capacitor"): Mark => ({
  value,
  unit: kind === "resistor" ? "ohm" : "farad",
  tolerance: null,
  ppmPerKelvin: null,
  notes: [],
});

/** Old tubulars: figures are picofarads as they stand, K thousands of them, a point before the figures microfarads. */
function erieMark(mark: string): Mark {
  const found = /^(\d+)(K)(\d*)$|^(\.\d+)$|^(\d+)([A-Z])?([A-Z])?$/.exec(mark);
  if (!found) throw new PartsError("unreadable", mark, "Write it like 470, 470JN, 3K3 or .01.");
  const [, thousands, , decimals, microfarads, picofarads, toleranceMark, temperatureMark] = found;
  if (thousands) return valueMark(Number(`${thousands}.${decimals || 0}e-9`), "capacitor");
  if (microfarads) return valueMark(Number(`${microfarads}e-6`), "capacitor");
  const value = timesPowerOfTen(Number(picofarads), PICO);
  return {
    ...valueMark(value, "capacitor"),
    tolerance: toleranceFor(toleranceMark, value, "capacitor", "ERIE"),
    ppmPerKelvin: temperatureMark ? (ERIE_PPM[temperatureMark] ?? null) : null,
    notes: /^\d{3}/.test(mark) ? ["read as it stands; a later part would mean a power of ten by the third figure"] : [],
  };
}
