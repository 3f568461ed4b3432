import * as core from "../core/index.js";
import { choice, rating } from "./ask.js";
import { type Ask, BLANK, cell, each, rowsOf } from "./cell.js";

/**
 * Which rule says how much an electrolytic may leak.
 * @customenum {string}
 */
export enum LeakRule {
  JanC62 = "JAN-C-62",
  Stockist1968 = "0.05 CV + 250 uA",
}

const LEAK_RULES = ["JAN-C-62", "0.05 CV + 250 uA"] as const;
const setting = (key: string) => Number(core.defaultSettings[key]);

/**
 * The volts across each capacitor of a series string: by capacitance, or at dc by the ohms across each.
 * @customfunction STRING_SHARE
 * @helpurl reference.html#STRING_SHARE
 * @param farads The capacitors in order: a range of numbers in farads or texts such as 20 uF.
 * @param volts The volts across the whole string.
 * @param insulation The insulation of each in ohms, in the same order: then the share at dc is given, for there the farads have no say.
 * @param balancing The resistor across each in ohms, one for all, where there are any; it counts at dc.
 * @returns Volts, one for each capacitor, one below another.
 * @example LUG.STRING_SHARE({"8 uF"; "16 uF"}, 450) -> {300; 150}
 */
export function stringShare(
  farads: unknown[][],
  volts: unknown[][],
  insulation?: unknown[][],
  balancing?: unknown[][],
): unknown[][] {
  return cell(() => {
    const all = filled(rating(farads, "farads", "farad"));
    const ohms = filled(rating(insulation, "insulation", "ohm"));
    const [across = null] = filled(rating(volts, "volts", "volt"));
    const [resistor = null] = filled(rating(balancing, "balancing", "ohm"));
    if (across === null || all.length === 0) return "";
    return shares(all, across, ohms, resistor).map((each) => [each]);
  });
}

function shares(farads: readonly number[], volts: number, ohms: readonly number[], balancing: number | null) {
  if (ohms.length === 0 && balancing === null) return core.stringShare(farads, volts);
  if (ohms.length === 0)
    return core.dcStringShare(
      farads.map(() => balancing!),
      volts,
    );
  if (ohms.length === farads.length) return core.dcStringShare(ohms, volts, balancing);
  throw new core.PartsError(
    "conflict",
    `${farads.length} capacitors and ${ohms.length} insulations`,
    "Give one for each.",
  );
}

function filled<T>(ask: Ask<T>): readonly T[] {
  return rowsOf(ask.given)
    .flat()
    .map(ask.read)
    .filter((each): each is Exclude<typeof each, typeof BLANK> => each !== BLANK);
}

/**
 * The leakage in amperes that an old electrolytic is allowed at its rated volts, after reforming.
 * @customfunction LEAK_MAX
 * @helpurl reference.html#LEAK_MAX
 * @param farads The capacitor: a number in farads, or text such as 20 uF.
 * @param volts Its rated volts.
 * @param rule JAN-C-62 (when left out; up to 500 V), or 0.05 CV + 250 uA, a stockist's limit of 1968.
 * @returns Amperes.
 * @example LUG.LEAK_MAX("20 uF", 450) -> 0.0011
 */
export function leakMax(farads: unknown[][], volts: unknown[][], rule?: LeakRule[][]): unknown[][] {
  return each(
    [rating(farads, "farads", "farad"), rating(volts, "volts", "volt"), choice(rule, "rule", LEAK_RULES, "JAN-C-62")],
    (farads, volts, rule) => {
      if (rule !== "JAN-C-62") return core.leakByCharge({ farads, volts }, { perCoulomb: 0.05, plusAmperes: 250e-6 });
      const amperes = core.electrolyticLeakAmps({ farads, volts });
      if (amperes !== null) return amperes;
      throw new core.PartsError("nothing-fits", `${volts} V`, "JAN-C-62 speaks of ratings up to 500 V.");
    },
  );
}

/**
 * How many volts a leaking coupling capacitor lifts the grid behind it.
 * @customfunction GRID_SHIFT
 * @helpurl reference.html#GRID_SHIFT
 * @param volts The volts across the capacitor.
 * @param insulation Its insulation in ohms, such as 200 M.
 * @param gridOhms The grid resistor in ohms, such as 470 k.
 * @returns Volts.
 * @example LUG.GRID_SHIFT(250, "200 M", "1 M") -> 1.24378109
 */
export function gridShift(volts: unknown[][], insulation: unknown[][], gridOhms: unknown[][]): unknown[][] {
  return each(
    [rating(volts, "volts", "volt"), rating(insulation, "insulation", "ohm"), rating(gridOhms, "gridOhms", "ohm")],
    (volts, insulationOhms, gridOhms) => core.gridShift({ volts, insulationOhms, gridOhms }),
  );
}

/**
 * The insulation in ohms that a coupling capacitor needs so that it lifts the grid by no more than a given voltage.
 * @customfunction INSULATION_MIN
 * @helpurl reference.html#INSULATION_MIN
 * @param volts The volts across the capacitor.
 * @param gridOhms The grid resistor in ohms, such as 470 k.
 * @param shiftVolts How far the grid may be lifted: 0.5 V when left out.
 * @returns Ohms.
 * @example LUG.INSULATION_MIN(250, "470 k") -> 234530000
 */
export function insulationMin(volts: unknown[][], gridOhms: unknown[][], shiftVolts?: unknown[][]): unknown[][] {
  return each(
    [
      rating(volts, "volts", "volt"),
      rating(gridOhms, "gridOhms", "ohm"),
      rating(shiftVolts, "shiftVolts", "volt", setting("grid_shift_V")),
    ],
    (volts, gridOhms, shiftVolts) => core.insulationFor({ volts, gridOhms, shiftVolts }),
  );
}

/**
 * The series resistance in ohms at which a capacitor's loss reaches a given dissipation factor.
 * @customfunction ESR_LIMIT
 * @helpurl reference.html#ESR_LIMIT
 * @param farads The capacitor: a number in farads, or text such as 20 uF.
 * @param dissipation The dissipation factor that is still good, as a ratio: 15% when left out.
 * @param hertz The frequency it is measured at: 120 hertz when left out.
 * @returns Ohms.
 * @example LUG.ESR_LIMIT("20 uF") -> 9.94718394
 */
export function esrLimit(farads: unknown[][], dissipation?: unknown[][], hertz?: unknown[][]): unknown[][] {
  return each(
    [
      rating(farads, "farads", "farad"),
      rating(dissipation, "dissipation", "ratio", 0.15),
      rating(hertz, "hertz", "hertz", 2 * setting("line_hz")),
    ],
    (farads, dissipation, hertz) => core.esrLimit({ farads, dissipation, hertz }),
  );
}
