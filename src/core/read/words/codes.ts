import type { Construction, Dielectric, Kind, Tolerance } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import { toleranceOfLetter } from "../../quantity/toleranceLetters.js";

/** What a type designation of the military specifications fixes; base units. */
export type DecodedCode = {
  readonly kind: Kind;
  readonly value: number | null;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly construction: Construction | null;
  readonly dielectric: Dielectric | null;
  readonly temperatureCoefficient: string | null;
};

type Family = {
  readonly kind: Kind;
  /** How many figures its value may have, the last one a number of zeros. */
  readonly digits: readonly number[];
  readonly unit: number;
  readonly construction?: Construction;
  readonly dielectric?: Dielectric;
  readonly watts?: (size: string, characteristic: string) => number | undefined;
  /** Whether the letter behind the value is a taper instead of a tolerance. */
  readonly isTapered?: true;
};

type Sizes = Readonly<Record<string, number>>;
const bySize = (sizes: Sizes) => (size: string) => sizes[size];

/** Sizes of composition resistors: MIL-R-11 (JAN-R-11), from memory; those of reliability letters (RCR) are the same. */
const COMPOSITION_WATTS: Sizes = {
  "05": 1 / 8, "06": 1 / 8, "07": 1 / 4, "08": 1 / 4, "09": 1 / 2, "10": 1 / 4, "12": 1 / 2, "15": 1 / 4, "16": 1 / 4,
  "20": 1 / 2, "21": 1 / 2, "25": 1 / 2, "30": 1, "31": 1, "32": 1, "35": 2, "38": 2, "40": 2, "41": 2, "42": 2, "65": 4, "75": 4,
}; // biome-ignore format: a table
/** Sizes of film resistors at 125 degrees C (characteristics C, E and on) and at 70 (B and D): MIL-R-10509, from memory. */
const WATTS_AT_125: Sizes = { "55": 1 / 10, "60": 1 / 8, "65": 1 / 4, "70": 1 / 2, "75": 1, "80": 2 };
const WATTS_AT_70: Sizes = { "55": 1 / 8, "60": 1 / 4, "65": 1 / 2, "70": 3 / 4, "75": 1, "80": 2 };
const filmWatts = (size: string, characteristic: string) =>
  (/^[BD]$/.test(characteristic) ? WATTS_AT_70 : WATTS_AT_125)[size];
/** Sizes of insulated film resistors, MIL-R-22684, and of power resistors on a chassis, MIL-R-18546; from memory. */
const INSULATED_FILM_WATTS: Sizes = { "05": 1 / 8, "07": 1 / 4, "20": 1 / 2, "32": 1, "42": 2 };
const CHASSIS_WATTS: Sizes = { "60": 5, "65": 10, "70": 20, "75": 30, "77": 75, "80": 120 };

const COMPOSITION = { kind: "resistor", unit: 1, construction: "composition", digits: [3], watts: bySize(COMPOSITION_WATTS) } as const; // biome-ignore format: a table
const FILM = { kind: "resistor", unit: 1, construction: "metal-film", digits: [4], watts: filmWatts } as const;
const WIREWOUND = { kind: "resistor", unit: 1, construction: "wirewound" } as const;
const CAPACITOR = { kind: "capacitor", unit: 1e-12, digits: [3] } as const;
const CONTROL = { kind: "potentiometer", unit: 1, digits: [3], isTapered: true } as const;

/**
 * Families by the letters they begin with: MIL-R-11, MIL-R-10509, MIL-R-22684, MIL-R-18546, JAN-R-26, JAN-R-93, JAN-R-94,
 * JAN-R-19, JAN-C-5, JAN-C-20A, MIL-C-11015, JAN-C-25, JAN-C-62, JAN-C-91, MIL-C-14157, MIL-C-3965, MIL-C-39003; from memory.
 */
const FAMILIES: Readonly<Record<string, Family>> = {
  RC: COMPOSITION,
  RCR: COMPOSITION,
  RN: FILM,
  RNC: FILM,
  RNR: FILM,
  RL: { kind: "resistor", unit: 1, construction: "film", digits: [3], watts: bySize(INSULATED_FILM_WATTS) },
  RLR: { kind: "resistor", unit: 1, construction: "film", digits: [4], watts: bySize(INSULATED_FILM_WATTS) },
  RW: { ...WIREWOUND, digits: [3] },
  RE: { ...WIREWOUND, digits: [4], watts: bySize(CHASSIS_WATTS) },
  RB: { ...WIREWOUND, digits: [4, 5] },
  RV: { ...CONTROL, construction: "composition" },
  RA: { ...CONTROL, construction: "wirewound" },
  CM: { ...CAPACITOR, dielectric: "mica" },
  CB: { ...CAPACITOR, dielectric: "mica" },
  CC: { ...CAPACITOR, dielectric: "ceramic" },
  CK: { ...CAPACITOR, dielectric: "ceramic" },
  CKR: { ...CAPACITOR, dielectric: "ceramic" },
  CP: { ...CAPACITOR, dielectric: "paper" },
  CN: { ...CAPACITOR, dielectric: "paper" },
  CH: { ...CAPACITOR, dielectric: "paper" },
  CQ: CAPACITOR,
  CE: { ...CAPACITOR, unit: 1e-6, dielectric: "electrolytic" },
  CL: { ...CAPACITOR, unit: 1e-6, dielectric: "tantalum" },
  CS: { ...CAPACITOR, dielectric: "tantalum" },
  CSR: { ...CAPACITOR, dielectric: "tantalum" },
};

/** Letters that mean a tolerance in all specifications; others name leads or a failure rate. */
const TOLERANCE = /^[BCDFGJKMZ]$/;

/** Family, size, characteristics, value, tolerance or taper, and a letter of reliability or of leads. */
const CODE =
  /^([A-Z]{2,3})(\d{1,2})([A-Z]{0,2}\d??[A-Z]{0,4}?)(\d{3,5}|\d{1,3}R\d{0,2}|R\d{2,3})(?:([A-Z])[A-Z0-9]?)?$/;

/**
 * What a type designation says, or null if it is none: RC20BF474K is 470 k, 10 %, 1/2 W composition.
 *
 * The size fixes a resistor's watts; a capacitor's volts stand in its specification's tables only and are left out.
 *
 * @example decodeCode("CM20B101K")!.value // 1e-10
 */
export function decodeCode(text: string): DecodedCode | null {
  const match = text.length <= 20 ? CODE.exec(text.toUpperCase()) : null;
  const family = match && FAMILIES[match[1]!];
  if (!match || !family) return null;
  const [, , size = "", middle = "", digits = "", letter = ""] = match;
  const value = valueOfDigits(digits, family);
  if (value === null) return null;
  const farads = family.kind === "capacitor" ? value : null;
  const isTolerance = TOLERANCE.test(letter) && !family.isTapered;
  return {
    kind: family.kind,
    value,
    tolerance: isTolerance ? toleranceOfLetter(letter, "IEC", farads) : null,
    watts: family.watts?.(size, middle) ?? null,
    construction: family.construction ?? null,
    dielectric: family.dielectric ?? null,
    temperatureCoefficient: match[1] === "CC" && middle.length === 2 ? middle : null,
  };
}

/** Significant figures and a number of zeros; R stands for the point. */
function valueOfDigits(digits: string, family: Family): number | null {
  if (digits.includes("R")) return Number(digits.replace("R", "."));
  if (!family.digits.includes(digits.length)) return null;
  const zeros = Number(digits.at(-1));
  return times(Number(digits.slice(0, -1)) * Number(`1e${zeros}`), family.unit);
}
