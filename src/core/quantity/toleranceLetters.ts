/** TABLE: tolerance letters by system; the same letter means different things in different systems. */

import type { Tolerance } from "../part.js";
import { PartsError } from "../problem.js";

/** The systems of tolerance letters that clash with each other. */
export const LETTER_SYSTEMS = ["IEC", "EIA", "ERIE"] as const;
export type LetterSystem = (typeof LETTER_SYSTEMS)[number];

const both = (ratio: number): Tolerance => ({ minus: ratio, plus: ratio });
const lopsided = (minus: number, plus: number): Tolerance => ({ minus, plus });

/**
 * Letters that all systems read alike.
 *
 * @see IEC 60062; the list of EIA letters agrees (common practice for M 20 %, K 10 %, J 5 %)
 */
const COMMON: Readonly<Record<string, Tolerance>> = {
  B: both(0.001),
  C: both(0.0025),
  D: both(0.005),
  F: both(0.01),
  G: both(0.02),
  J: both(0.05),
  K: both(0.1),
  M: both(0.2),
  Z: lopsided(0.2, 0.8),
};

/** Letters by system. IEC L and W are tight, the American L and W wide: one table for both would be wrong. */
const LETTERS: Readonly<Record<LetterSystem, Readonly<Record<string, Tolerance>>>> = {
  IEC: {
    ...COMMON,
    L: both(0.0001),
    P: both(0.0002),
    W: both(0.0005),
    H: both(0.03),
    N: both(0.3),
    Q: lopsided(0.1, 0.3),
    S: lopsided(0.2, 0.5),
    T: lopsided(0.1, 0.5),
  },
  EIA: {
    ...COMMON,
    L: both(0.15),
    H: both(0.03),
    N: both(0.3),
    P: lopsided(0, 1),
    Q: lopsided(0.1, 0.3),
    S: lopsided(0.2, 0.5),
    T: lopsided(0.1, 0.5),
    W: lopsided(0.2, 0.4),
    Y: lopsided(0.2, 0.5),
  },
  ERIE: { ...COMMON, H: both(0.025), N: lopsided(0.2, 0.4), P: lopsided(0.2, 0.8) },
};

const PICOFARADS: Readonly<Record<string, number>> = { B: 0.1e-12, C: 0.25e-12, D: 0.5e-12, F: 1e-12, G: 2e-12 };
const SMALL_CAPACITOR = 10e-12;

/**
 * The tolerance that a letter stands for, in the system named.
 *
 * On a capacitor under 10 pF the letters B to G count picofarads, not percent; give its farads to have that read.
 *
 * @param farads The nominal of a capacitor, null for any other part.
 * @throws PartsError "unknown-name" when the system has no such letter.
 * @see IEC 60062 for IEC and for the picofarad letters; EIA lists for EIA; the maker's old chart for ERIE
 * @example toleranceOfLetter("K") // { minus: 0.1, plus: 0.1 }
 */
export function toleranceOfLetter(
  letter: string,
  system: LetterSystem = "IEC",
  farads: number | null = null,
): Tolerance {
  const picofarads = PICOFARADS[letter];
  if (farads !== null && farads < SMALL_CAPACITOR && picofarads) return both(picofarads / farads);
  const found = LETTERS[system][letter];
  if (!found) {
    const known = Object.keys(LETTERS[system]).sort().join(" ");
    throw new PartsError("unknown-name", letter, `Tolerance letters of ${system} are ${known}.`);
  }
  return found;
}

/**
 * The letter a system has for a tolerance, null where it has none.
 *
 * @example letterOfTolerance({ minus: 0.05, plus: 0.05 }) // "J"
 */
export function letterOfTolerance(tolerance: Tolerance, system: LetterSystem = "IEC"): string | null {
  const found = Object.entries(LETTERS[system]).find(
    ([, known]) => Math.abs(known.minus - tolerance.minus) < 1e-9 && Math.abs(known.plus - tolerance.plus) < 1e-9,
  );
  return found?.[0] ?? null;
}
