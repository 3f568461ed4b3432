/** TABLE: the preferred series, one decade each. */

import { PartsError } from "../problem.js";
import type { Series } from "./seriesOf.js";
import { seriesOf } from "./seriesOf.js";

/** The names of the preferred series: IEC 60063 for E, ISO 3 for R. */
export const SERIES_NAMES = ["E3", "E6", "E12", "E24", "E48", "E96", "E192", "R5", "R10", "R20", "R40"] as const;
export type SeriesName = (typeof SERIES_NAMES)[number];

const E3 = [100, 220, 470];
const E6 = [100, 150, 220, 330, 470, 680];
const E12 = [100, 120, 150, 180, 220, 270, 330, 390, 470, 560, 680, 820];
const E24 = [
  100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300, 330, 360, 390, 430, 470, 510, 560, 620, 680, 750, 820,
  910,
];
const E48 = [
  100, 105, 110, 115, 121, 127, 133, 140, 147, 154, 162, 169, 178, 187, 196, 205, 215, 226, 237, 249, 261, 274, 287,
  301, 316, 332, 348, 365, 383, 402, 422, 442, 464, 487, 511, 536, 562, 590, 619, 649, 681, 715, 750, 787, 825, 866,
  909, 953,
];
const E96 = [
  100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150, 154, 158, 162, 165, 169,
  174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232, 237, 243, 249, 255, 261, 267, 274, 280, 287, 294,
  301, 309, 316, 324, 332, 340, 348, 357, 365, 374, 383, 392, 402, 412, 422, 432, 442, 453, 464, 475, 487, 499, 511,
  523, 536, 549, 562, 576, 590, 604, 619, 634, 649, 665, 681, 698, 715, 732, 750, 768, 787, 806, 825, 845, 866, 887,
  909, 931, 953, 976,
];
const E192 = [
  100, 101, 102, 104, 105, 106, 107, 109, 110, 111, 113, 114, 115, 117, 118, 120, 121, 123, 124, 126, 127, 129, 130,
  132, 133, 135, 137, 138, 140, 142, 143, 145, 147, 149, 150, 152, 154, 156, 158, 160, 162, 164, 165, 167, 169, 172,
  174, 176, 178, 180, 182, 184, 187, 189, 191, 193, 196, 198, 200, 203, 205, 208, 210, 213, 215, 218, 221, 223, 226,
  229, 232, 234, 237, 240, 243, 246, 249, 252, 255, 258, 261, 264, 267, 271, 274, 277, 280, 284, 287, 291, 294, 298,
  301, 305, 309, 312, 316, 320, 324, 328, 332, 336, 340, 344, 348, 352, 357, 361, 365, 370, 374, 379, 383, 388, 392,
  397, 402, 407, 412, 417, 422, 427, 432, 437, 442, 448, 453, 459, 464, 470, 475, 481, 487, 493, 499, 505, 511, 517,
  523, 530, 536, 542, 549, 556, 562, 569, 576, 583, 590, 597, 604, 612, 619, 626, 634, 642, 649, 657, 665, 673, 681,
  690, 698, 706, 715, 723, 732, 741, 750, 759, 768, 777, 787, 796, 806, 816, 825, 835, 845, 856, 866, 876, 887, 898,
  909, 920, 931, 942, 953, 965, 976, 988,
];
const R5 = [100, 160, 250, 400, 630];
const R10 = [100, 125, 160, 200, 250, 315, 400, 500, 630, 800];
const R20 = [100, 112, 125, 140, 160, 180, 200, 224, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900];
const R40 = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
  375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

/**
 * The preferred series by name: E3 to E192 for resistors and capacitors, R5 to R40 for everything else.
 *
 * Steps are written with three figures, 100 to 999. E24 and E192 depart from the rounded powers of ten in places
 * (2.7 to 4.7, 8.2; 9.20), and E24 is no part of E192: only the lists count.
 *
 * @see IEC 60063:2015; ISO 3:1973 (R5 to R40). 3.35 of R40 is given from memory of ISO 3.
 * @example SERIES.E12.steps[1] // 120
 */
export const SERIES: Readonly<Record<SeriesName, Series>> = {
  E3: seriesOf("E3", E3, 0.4),
  E6: seriesOf("E6", E6, 0.2),
  E12: seriesOf("E12", E12, 0.1),
  E24: seriesOf("E24", E24, 0.05),
  E48: seriesOf("E48", E48, 0.02),
  E96: seriesOf("E96", E96, 0.01),
  E192: seriesOf("E192", E192, 0.005),
  R5: seriesOf("R5", R5, null),
  R10: seriesOf("R10", R10, null),
  R20: seriesOf("R20", R20, null),
  R40: seriesOf("R40", R40, null),
};

/**
 * The series of that name, however it is written.
 *
 * @throws PartsError "unknown-name" when no such series exists.
 * @example seriesNamed("e 24") // SERIES.E24
 */
export function seriesNamed(name: string): Series {
  const key = name.replace(/\s+/g, "").toUpperCase();
  const found = SERIES_NAMES.find((known) => known === key);
  if (!found) throw new PartsError("unknown-name", name, `A series is one of ${SERIES_NAMES.join(", ")}.`);
  return SERIES[found];
}
