import * as core from "../core/index.js";
import { choice, size } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * The preferred series.
 * @customenum {string}
 */
export enum SeriesName {
  E3 = "E3",
  E6 = "E6",
  E12 = "E12",
  E24 = "E24",
  E48 = "E48",
  E96 = "E96",
  E192 = "E192",
  R5 = "R5",
  R10 = "R10",
  R20 = "R20",
  R40 = "R40",
}

/**
 * Which of two neighbouring standard values is taken.
 * @customenum {string}
 */
export enum NearestRule {
  Ratio = "ratio",
  Difference = "difference",
  NotBelow = "not below",
  NotAbove = "not above",
}

/**
 * The standard value nearest to the one wanted, in the same unit (ohms, farads, henries or any other).
 * @customfunction NEAREST_STD
 * @helpurl reference.html#NEAREST_STD
 * @param wanted The value wanted: a number, or text such as 52 k.
 * @param series The series: E24 when left out.
 * @param rule ratio (when left out: 56 k is nearer to 52 k than 47 k is), difference, not below or not above. Of two equally near ones the smaller is taken.
 * @returns The standard value.
 * @example LUG.NEAREST_STD(52000, "E12") -> 56000
 */
export function nearestStd(wanted: unknown[][], series?: SeriesName[][], rule?: NearestRule[][]): unknown[][] {
  return each(
    [
      size(wanted, "wanted"),
      choice(series, "series", core.SERIES_NAMES, "E24"),
      choice(rule, "rule", core.NEAREST_RULES, "ratio"),
    ],
    (wanted, series, rule) => core.nearest(wanted, core.SERIES[series], rule),
  );
}

/**
 * All standard values from the smallest to the largest wanted, in the same unit (ohms, farads or any other), one below another.
 * @customfunction STD_VALUES
 * @helpurl reference.html#STD_VALUES
 * @param smallest Where to begin: a number, or text such as 1 k.
 * @param largest Where to end.
 * @param series The series: E24 when left out.
 * @returns A column of values.
 * @example LUG.STD_VALUES(1000, 10000, "E3") -> {1000; 2200; 4700; 10000}
 */
export function stdValues(smallest: unknown[][], largest: unknown[][], series?: SeriesName[][]): unknown[][] {
  return spill(
    [size(smallest, "smallest"), size(largest, "largest"), choice(series, "series", core.SERIES_NAMES, "E24")],
    (smallest, largest, series) => core.stepsBetween(smallest, largest, core.SERIES[series]).map((step) => [step]),
  );
}
