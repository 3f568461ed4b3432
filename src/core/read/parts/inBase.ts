import type { Kind, Warning } from "../../part.js";
import type { Unit } from "../../quantity/notation/units.js";
import { times } from "../../quantity/readValue.js";
import type { Figure, Words } from "../words/words.js";
import { type Context, MEASURE_OF } from "./context.js";

/** A figure in base units, with what has to be said of it; null when it can't be settled or measures something else. */
export type InBase = { readonly value: number | null; readonly warnings: readonly Warning[] };

/** What helps to settle a bare number: the head's unit, the dielectric, the volts, the unit of the part's own tolerance. */
export type Clues = {
  readonly kind: Kind;
  readonly head: Unit | null;
  readonly dielectric: string | null;
  readonly volts: number | null;
  readonly watts: number | null;
  readonly wirewound: boolean;
  readonly toleranceUnit: Unit | null;
  /** Whether the number stands in a column of values. */
  readonly isValue?: boolean;
  /** Whether the number is one of several that make a can. */
  readonly several?: boolean;
  /** Whether the part is named as a section of another: C1A, C1B. */
  readonly isSection?: boolean;
};

const MICRO: Unit = { measure: "farad", factor: 1e-6 };
const PICO: Unit = { measure: "farad", factor: 1e-12 };
/** Capacitance in centimetres, the electrostatic unit of German lists before 1940: 1 cm is 1.113 pF. */
const CENTIMETRE = 1e-2;
const PICOFARADS_OF_A_CENTIMETRE = 1.112650056;
const plain = (value: number): InBase => ({ value, warnings: [] });

/** The figure as the part's value in base units, or null when it does not measure what the part's value is. */
export function inBase(figure: Figure, words: Words, clues: Clues, context: Context): InBase | null {
  const wanted = MEASURE_OF[clues.kind];
  if (!wanted) return null;
  const settled = settle(figure, words, clues, context, wanted);
  if (!settled) return null;
  const printed = words.tokens.slice(figure.from, figure.to);
  const repaired = printed.some((token) => token.repaired);
  const text = printed.map((token) => token.text).join("");
  if (isBroken(text, context))
    return { value: null, warnings: [unreadable(text, "a figure or a mark is missing or too much")] };
  return repaired
    ? { ...settled, warnings: [...settled.warnings, unreadable(text, "a letter stands for a figure")] }
    : settled;
}

const unreadable = (text: string, why: string): Warning => ({ code: "unreadable", text: `"${text}": ${why}` });

/** "27,0000" has a figure or a comma too much; "01" has lost its point. */
const isBroken = (text: string, context: Context) =>
  (context.writing.mark === "point" && /[1-9]\d*,\d{4,}/.test(text)) || /^0\d+(?![\d.,])/.test(text);

function settle(
  figure: Figure,
  words: Words,
  clues: Clues,
  context: Context,
  wanted: "ohm" | "farad" | "henry",
): InBase | null {
  const { unit, number } = figure;
  if (!unit) return bare(figure, words, clues, context, wanted);
  if (unit.capitalM && (unit.measure === null || unit.measure === "ohm"))
    return capitalM(number, clues, context, wanted);
  if (unit.measure === wanted) return plain(times(number, unit.factor));
  if (wanted === "farad" && unit.measure === "metre" && unit.factor === CENTIMETRE)
    return plain(times(number * PICOFARADS_OF_A_CENTIMETRE, 1e-12));
  if (unit.measure !== null) return null;
  if (wanted === "henry" && unit.factor < 1) return plain(times(number, unit.factor));
  if (wanted === "ohm") return unit.factor >= 1e3 ? plain(times(number, unit.factor)) : null;
  if (wanted === "farad" && unit.factor < 1) return plain(times(number, unit.factor));
  if (wanted === "farad" && unit.factor === 1e3 && clues.dielectric !== "electrolytic")
    return {
      value: times(number * 1000, 1e-12),
      warnings: [assumed(`${number}K on a capacitor is taken as thousand picofarads`)],
    };
  return null;
}

const assumed = (text: string): Warning => ({ code: "unit-assumed", text });

/** A bare M: microfarad on a capacitor; thousand or million on a resistor, as the document has it. */
function capitalM(number: number, clues: Clues, context: Context, wanted: "ohm" | "farad" | "henry"): InBase | null {
  if (wanted === "farad")
    return { value: times(number, 1e-6), warnings: [assumed("M on a capacitor is taken as microfarad")] };
  if (wanted === "henry") return null;
  const { capitalM: meaning, by, megPrinted } = context.dialect;
  const readings = `${number}M is ${number * 1000} ohms or ${number} megohms`;
  const ambiguous: Warning = { code: "ambiguous-m", text: readings };
  if (meaning === null) return { value: null, warnings: [ambiguous] };
  const value = times(number, meaning === "thousand" ? 1e3 : 1e6);
  if (by !== "list") return plain(value);
  if (meaning === "thousand" && number < 1)
    return { value: clues.wirewound || (clues.watts ?? 0) >= 2 ? value : null, warnings: [ambiguous] };
  return { value, warnings: meaning === "million" && megPrinted ? [ambiguous] : [] };
}

/** A number without unit: by the head, the notes, the kind; else guessed from the make, and said so. */
function bare(
  figure: Figure,
  words: Words,
  clues: Clues,
  context: Context,
  wanted: "ohm" | "farad" | "henry",
): InBase | null {
  const { number } = figure;
  if (clues.head?.capitalM && wanted === "ohm") return capitalM(number, clues, context, wanted);
  if (clues.head?.measure === wanted) return plain(times(number, clues.head.factor));
  if (wanted === "ohm") return clues.head?.measure ? null : plain(number);
  if (wanted === "henry") return bareCoil(number, clues, context);
  if (clues.toleranceUnit?.measure === "farad") return plain(times(number, clues.toleranceUnit.factor));
  const decimal = /[.,½¼]/.test(
    words.tokens
      .slice(figure.from, figure.to)
      .map((token) => token.text)
      .join(""),
  );
  const noted = notedUnit(number, decimal, clues, context);
  if (noted && times(number, noted.factor) >= LEAST_FARADS) return plain(times(number, noted.factor));
  const guess = guessedUnit(number, decimal, clues);
  return {
    value: times(number, guess.factor),
    warnings: [assumed(`${number} is taken as ${guess === MICRO ? "microfarad" : "picofarad"}`)],
  };
}

/** A coil's number without unit may be henries or ohms: no value, and said so where it stands for the value. */
function bareCoil(number: number, { head, isValue }: Clues, { units }: Context): InBase | null {
  if (units.henries) return plain(times(number, units.henries.factor));
  return isValue && !head?.measure
    ? { value: null, warnings: [unreadable(String(number), "a coil's number without unit")] }
    : null;
}

/** No capacitor of half a picofarad was listed (common practice): a note that would make one speaks of others. */
const LEAST_FARADS = 0.5e-12;

const SMALL = new Set(["ceramic", "mica", "silver-mica", "air", "polystyrene"]);
const LARGE = new Set(["electrolytic", "tantalum", "paper", "oil"]);

function notedUnit(number: number, decimal: boolean, clues: Clues, context: Context): Unit | null {
  const { wholes, decimals, electrolytics } = context.units;
  if (clues.dielectric === "electrolytic" || clues.dielectric === "tantalum")
    return electrolytics ?? (wholes?.factor === 1e-6 ? wholes : null);
  const isSmall =
    wholes !== null &&
    number >= 1 &&
    (clues.dielectric === null || SMALL.has(clues.dielectric)) &&
    wholes !== decimals &&
    number < 10;
  if (decimal && isSmall && SMALL.has(clues.dielectric ?? "")) return wholes;
  return decimal ? decimals : wholes;
}

/** Common practice on schematics and in lists: below one it is microfarad; of one and more by the make. */
function guessedUnit(number: number, decimal: boolean, clues: Clues): Unit {
  if (number < 1) return MICRO;
  if (LARGE.has(clues.dielectric ?? "")) return MICRO;
  if (SMALL.has(clues.dielectric ?? "")) return PICO;
  if (clues.several || (clues.isSection && clues.volts !== null)) return MICRO;
  const isLowVoltage = clues.volts !== null && clues.volts <= 100 && number < 1000;
  return isLowVoltage || (decimal && number < 100) ? MICRO : PICO;
}
