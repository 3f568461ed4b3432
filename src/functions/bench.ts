import * as core from "../core/index.js";
import { allowed, choice, measured, size, sizeAndKind } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * How a reading is judged.
 * @customenum {string}
 */
export enum VerdictRule {
  FourWay = "four-way",
  Simple = "simple",
  Strict = "strict",
}

/**
 * Whether a part was read lifted or in place.
 * @customenum {string}
 */
export enum WhereRead {
  Lifted = "lifted",
  InPlace = "in place",
}

/**
 * What was read in place.
 * @customenum {string}
 */
export enum InPlaceQuantity {
  Resistance = "resistance",
  Insulation = "insulation",
  Capacitance = "capacitance",
  Esr = "ESR",
  Leakage = "leakage",
  Inductance = "inductance",
}

const WHERE = ["lifted", "in place"] as const;
const QUANTITY_OF = { capacitor: "capacitance", inductor: "inductance" } as const;

/**
 * How far a reading in ohms, farads or henries lies from the printed value, as a ratio: 30% too high is 0.3.
 * @customfunction DRIFT
 * @helpurl reference.html#DRIFT
 * @param nominal The printed value: a number in ohms, farads or henries, or text such as 470 k.
 * @param reading What the meter read, in the same unit.
 * @returns A ratio; a cell may show it as percent.
 * @example LUG.DRIFT("500 k", "600 k") -> 0.2
 */
export function drift(nominal: unknown[][], reading: unknown[][]): unknown[][] {
  return each([size(nominal, "nominal"), size(reading, "reading")], (nominal, reading) =>
    core.drift({ nominal, reading }),
  );
}

/**
 * Whether a part is good by its reading in ohms, farads or henries, and by how far the meter may be off.
 * @customfunction VERDICT
 * @helpurl reference.html#VERDICT
 * @param reading What the meter read: a number in ohms, farads or henries, or text such as 612 k.
 * @param nominal The printed value, in the same unit.
 * @param limit How far off a good part may be: a ratio such as 20%, or text such as -20/+80 %.
 * @param uncertainty How far the meter may be off, as a ratio of the reading: 1% when left out.
 * @param where lifted (when left out) or in place, where only a reading that neighbours can't cause tells anything.
 * @param rule four-way (good, likely good, likely bad, bad; when left out), simple, or strict (good only when certain).
 * @returns A word: good, likely good, likely bad, bad, or says nothing in place.
 * @example LUG.VERDICT("612 k", "470 k", 20%) -> "bad"
 */
export function verdict(
  reading: unknown[][],
  nominal: unknown[][],
  limit: unknown[][],
  uncertainty?: unknown[][],
  where?: WhereRead[][],
  rule?: VerdictRule[][],
): unknown[][] {
  return each(
    [
      size(reading, "reading"),
      sizeAndKind(nominal, "nominal"),
      allowed(limit, "limit"),
      measured(uncertainty, "uncertainty", "ratio", 0.01),
      choice(where, "where", WHERE, "lifted"),
      choice(rule, "rule", core.VERDICT_RULES, "four-way"),
    ],
    (reading, nominal, limit, share, where, rule) => {
      const read = {
        reading,
        uncertainty: core.uncertaintyOf({ reading, share }),
        window: core.windowOf(nominal.value, limit),
      };
      if (where === "lifted") return core.verdict(read, rule);
      const kind = nominal.kind ?? (nominal.value < 0.1 ? "capacitor" : "resistor");
      const quantity = QUANTITY_OF[kind as keyof typeof QUANTITY_OF] ?? "resistance";
      return core.inPlaceTells({ ...read, quantity }).verdict;
    },
  );
}

/**
 * What a reading taken in place can prove: bad, good or nothing, for neighbours bend ohms and farads one way only.
 * @customfunction IN_PLACE_TELLS
 * @helpurl reference.html#IN_PLACE_TELLS
 * @param quantity resistance, insulation, capacitance, ESR, leakage or inductance.
 * @param reading What the meter read, a number in base units (ohms, farads, amperes, henries) or text.
 * @param lowest The lowest that a good part reads; no limit when left out.
 * @param highest The highest that a good part reads; no limit when left out.
 * @param uncertainty How far the meter may be off, as a ratio of the reading: 1% when left out.
 * @returns A word, and why.
 * @example LUG.IN_PLACE_TELLS("resistance", "612 k", "376 k", "564 k") -> {"bad", "parallel paths only lower it: a high reading convicts, a low or true one proves nothing"}
 */
export function inPlaceTells(
  quantity: InPlaceQuantity[][],
  reading: unknown[][],
  lowest?: unknown[][],
  highest?: unknown[][],
  uncertainty?: unknown[][],
): unknown[][] {
  return spill(
    [
      choice(quantity, "quantity", core.IN_PLACE_QUANTITIES),
      size(reading, "reading"),
      size(lowest, "lowest", Number.NEGATIVE_INFINITY),
      size(highest, "highest", Number.POSITIVE_INFINITY),
      measured(uncertainty, "uncertainty", "ratio", 0.01),
    ],
    (quantity, reading, min, max, share) => {
      const uncertainty = core.uncertaintyOf({ reading, share });
      const told = core.inPlaceTells({ quantity, reading, uncertainty, window: { min, max } });
      return [[told.verdict, told.because]];
    },
  );
}

/**
 * What must lie in parallel with a part, in ohms or farads, given its readings lifted and in place.
 * @customfunction PARALLEL_PATH
 * @helpurl reference.html#PARALLEL_PATH
 * @param lifted The reading with a lead lifted: a number in ohms or farads, or text such as 100 k.
 * @param inPlace The reading in place, in the same unit.
 * @returns Ohms or farads; the text "none" where both readings agree.
 * @example LUG.PARALLEL_PATH("100 k", "50 k") -> 100000
 */
export function parallelPath(lifted: unknown[][], inPlace: unknown[][]): unknown[][] {
  return each([sizeAndKind(lifted, "lifted"), size(inPlace, "inPlace")], (lifted, inPlace) => {
    if (lifted.value === inPlace) return "none";
    const read = { lifted: lifted.value, inPlace };
    const isCapacitor = lifted.kind === "capacitor" || (lifted.kind === null && lifted.value < 0.1);
    return isCapacitor ? core.parallelFarads(read) : core.parallelPath(read);
  });
}
