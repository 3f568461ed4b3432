import type { Construction, Dielectric, Kind, Tolerance } from "../../part.js";
import { times } from "../../quantity/readValue.js";

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
  readonly digits: 3 | 4;
  readonly unit: number;
  readonly construction?: Construction;
  readonly dielectric?: Dielectric;
  readonly watts?: Readonly<Record<string, number>>;
};

/** Sizes of composition resistors: MIL-R-11 (JAN-R-11), from memory; those of reliability letters (RCR) are the same. */
const COMPOSITION_WATTS = {
  "05": 1 / 8, "06": 1 / 8, "07": 1 / 4, "08": 1 / 4, "09": 1 / 2, "10": 1 / 4, "12": 1 / 2, "15": 1 / 4, "16": 1 / 4,
  "20": 1 / 2, "21": 1 / 2, "25": 1 / 2, "30": 1, "31": 1, "32": 1, "35": 2, "38": 2, "40": 2, "41": 2, "42": 2, "65": 4, "75": 4,
}; // biome-ignore format: a table
/** Sizes of film resistors: MIL-R-10509, characteristic B (70 degrees C), from memory. */
const FILM_WATTS = { "55": 1 / 8, "60": 1 / 8, "65": 1 / 4, "70": 1 / 2, "75": 1, "80": 2 };

/** Families by the letters they begin with: MIL-R-11, MIL-R-10509, MIL-R-22684, JAN-R-26, JAN-R-93, JAN-C-5, JAN-C-20A, MIL-C-11015, JAN-C-25, JAN-C-91, MIL-C-39003; from memory. */
const FAMILIES: Readonly<Record<string, Family>> = {
  RC: { kind: "resistor", digits: 3, unit: 1, construction: "composition", watts: COMPOSITION_WATTS },
  RCR: { kind: "resistor", digits: 3, unit: 1, construction: "composition", watts: COMPOSITION_WATTS },
  RN: { kind: "resistor", digits: 4, unit: 1, construction: "metal-film", watts: FILM_WATTS },
  RL: { kind: "resistor", digits: 3, unit: 1, construction: "film" },
  RW: { kind: "resistor", digits: 3, unit: 1, construction: "wirewound" },
  RB: { kind: "resistor", digits: 4, unit: 1, construction: "wirewound" },
  CM: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "mica" },
  CB: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "mica" },
  CC: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "ceramic" },
  CK: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "ceramic" },
  CP: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "paper" },
  CN: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "paper" },
  CS: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "tantalum" },
  CSR: { kind: "capacitor", digits: 3, unit: 1e-12, dielectric: "tantalum" },
};

/** Tolerance letters of IEC 60062:2016 (B, C, D in percent are for resistors). */
const LETTERS: Readonly<Record<string, number>> = {
  B: 0.001,
  C: 0.0025,
  D: 0.005,
  F: 0.01,
  G: 0.02,
  J: 0.05,
  K: 0.1,
  M: 0.2,
};

const CODE = /^([A-Z]{2,3})(\d{2})([A-Z]{0,2}\d??[A-Z]{0,2}?)(\d{3,4}|\d{1,2}R\d{0,2}|R\d{2,3})([A-Z])?$/;

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
  const tolerance = LETTERS[letter];
  return {
    kind: family.kind,
    value,
    tolerance: tolerance === undefined ? null : { minus: tolerance, plus: tolerance },
    watts: family.watts?.[size] ?? null,
    construction: family.construction ?? null,
    dielectric: family.dielectric ?? null,
    temperatureCoefficient: match[1] === "CC" && middle.length === 2 ? middle : null,
  };
}

/** Significant figures and a number of zeros; R stands for the point. */
function valueOfDigits(digits: string, family: Family): number | null {
  if (digits.includes("R")) return Number(digits.replace("R", "."));
  if (digits.length !== family.digits) return null;
  const zeros = Number(digits.at(-1));
  return times(Number(digits.slice(0, -1)) * Number(`1e${zeros}`), family.unit);
}
