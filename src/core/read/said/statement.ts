import type { Measure } from "../../quantity/notation/units.js";

/** What a figure measures; degrees have no place among the units of parts lists. */
export type SaidMeasure = Measure | "celsius";

/**
 * Numbers that somebody states, with the words that stand by them: "warm-up peak 420 V", or the key `peakV` of a table.
 *
 * `numbers` are in base units where a unit is written, `measure` is null where none is. `where` tells a free text, in
 * which a bare "15 V" is what stands on the part, from a label, under which it is what is printed on it.
 */
export type Statement = {
  readonly words: readonly string[];
  readonly measure: SaidMeasure | null;
  readonly numbers: readonly number[];
  readonly where: "text" | "label";
};

/**
 * Figures that people state of a part. `volts` is what stands across it, `nodeVolts` what stands at one end of it,
 * `ratedVolts` what is printed on it; `testVolts` those of an insulation test; `lineVolts`, `lineDesignVolts` and
 * `lineHertz` are of the set; `gridShiftVolts` what a leak may move the next grid by.
 */
export type FigureName =
  | "nominal"
  | "tolerance"
  | "watts"
  | "lostWatts"
  | "ratedVolts"
  | "volts"
  | "nodeVolts"
  | "acVolts"
  | "peakVolts"
  | "warmUpVolts"
  | "windingVolts"
  | "pulseVolts"
  | "amps"
  | "loadAmps"
  | "plates"
  | "dropVolts"
  | "stringVolts"
  | "rectifierFarads"
  | "gridOhms"
  | "reading"
  | "accuracy"
  | "insulation"
  | "insulationLimit"
  | "leakage"
  | "leakLimit"
  | "testVolts"
  | "esr"
  | "esrLimit"
  | "forwardVolts"
  | "reverseOhms"
  | "strikeVolts"
  | "startVolts"
  | "startShare"
  | "supplyVolts"
  | "lineVolts"
  | "lineDesignVolts"
  | "lineHertz"
  | "gridShiftVolts"
  | "dissipation"
  | "caseOhms"
  | "celsius"
  | "roomLength"
  | "roomDiameter"
  | "tagSpan"
  | "stock"
  | "era";
