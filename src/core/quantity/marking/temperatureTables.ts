/** TABLE: letters for how a ceramic capacitor changes with temperature. */
import type { Tolerance } from "../../part.js";

/** First letter of class II codes: lowest temperature, in degrees Celsius. @see EIA-198; TI SLAA701B table 1-16 */
export const LOWEST_CELSIUS: Readonly<Record<string, number>> = { X: -55, Y: -30, Z: 10 };

/** Figure of class II codes: highest temperature, in degrees Celsius. @see EIA-198; TI SLAA701B */
export const HIGHEST_CELSIUS: Readonly<Record<string, number>> = {
  2: 45,
  4: 65,
  5: 85,
  6: 105,
  7: 125,
  8: 150,
  9: 200,
};

const both = (ratio: number): Tolerance => ({ minus: ratio, plus: ratio });

/** Last letter of class II codes: change over the range. @see EIA-198; TI SLAA701B for P to V */
export const CHANGES: Readonly<Record<string, Tolerance>> = {
  A: both(0.01),
  B: both(0.015),
  C: both(0.022),
  D: both(0.033),
  E: both(0.047),
  F: both(0.075),
  P: both(0.1),
  R: both(0.15),
  S: both(0.22),
  T: { minus: 0.33, plus: 0.22 },
  U: { minus: 0.56, plus: 0.22 },
  V: { minus: 0.82, plus: 0.22 },
};

/** First letter of class I codes: the significant figure. @see EIA-198 */
export const SIGNIFICANT: Readonly<Record<string, number>> = {
  C: 0,
  B: 0.3,
  L: 0.8,
  A: 0.9,
  M: 1,
  P: 1.5,
  R: 2.2,
  S: 3.3,
  T: 4.7,
  V: 5.6,
  U: 7.5,
};

/** Figure of class I codes: what it is multiplied by. Sources disagree on 4 and 5, so they are not read. @see EIA-198 */
export const MULTIPLIERS: Readonly<Record<string, number>> = {
  0: -1,
  1: -10,
  2: -100,
  3: -1000,
  6: 10,
  7: 100,
  8: 1000,
};

/** Last letter of class I codes: how far the coefficient itself may be off, in millionths for each kelvin. @see EIA-198 */
export const COEFFICIENT_LIMITS: Readonly<Record<string, number>> = {
  G: 30,
  H: 60,
  J: 120,
  K: 250,
  L: 500,
  M: 1000,
  N: 2500,
};

/** Second letter of old ERIE tubular marks, in millionths for each kelvin. @see keith-snook.info, component colour codes */
export const ERIE_PPM: Readonly<Record<string, number>> = {
  W: 470,
  A: 100,
  B: 30,
  C: 0,
  D: -30,
  E: -50,
  F: -80,
  G: -150,
  H: -220,
  J: -330,
  K: -470,
  L: -560,
  N: -750,
};
