/** TABLE: the units in which a case's keys and texts end. */

/** What a unit measures; celsius is told apart from a capacitance's C by the name before it. */
export type Measure = "volts" | "amps" | "watts" | "ohms" | "farads" | "ratio" | "hertz" | "celsius" | "metres";

/** A unit as written, and what one of it is in base units (ratios for percent). */
type UnitRow = readonly [written: string, measure: Measure, factor: number];

/** Units as written at the end of a key or a figure. `Mohm` is megohms: nobody reads milliohms on these parts. */
const UNITS: readonly UnitRow[] = [
  ["pct|percent|Pct|Percent|%", "ratio", 0.01],
  ["uF|µF|uf|mfd|MFD|mf|MF", "farads", 1e-6],
  ["nF|nf", "farads", 1e-9],
  ["pF|pf|mmf|MMF|mmfd|µµF|uuF", "farads", 1e-12],
  ["F|farads?", "farads", 1],
  ["[Mm]eg(?:a?[Oo]hms?)?|[Mm]_?[Oo]hms?|MΩ|M Ω", "ohms", 1e6],
  ["[kK]_?[Oo]hms?|[kK]Ω|[kK] Ω", "ohms", 1e3],
  ["[kK]", "ohms", 1e3],
  ["[Oo]hms?|Ω", "ohms", 1],
  ["mA|ma|MA|milliamps?", "amps", 1e-3],
  ["uA|µA|ua|Ua|microamps?", "amps", 1e-6],
  ["A|[Aa]mps?|amperes?", "amps", 1],
  ["kV|KV|kv", "volts", 1e3],
  ["mV|mv", "volts", 1e-3],
  ["[Vv](?:ac|dc|rms|AC|DC)|VAC|VDC|[Vv]olts?|V|v", "volts", 1],
  ["mW|mw", "watts", 1e-3],
  ["W|w|[Ww]atts?", "watts", 1],
  ["[Hh]z", "hertz", 1],
  ["mm|Mm", "metres", 1e-3],
  ["[Dd]eg_?C|°C|[Cc]elsius|C", "celsius", 1],
];

/** A name with the unit that may have stood behind it; no unit is a measure of its own. */
export type Unitless = { readonly name: string; readonly measure: Measure | null; readonly factor: number };

/** What a unit that stands alone names. */
const BARE: Readonly<Record<Measure, string>> = {
  volts: "v",
  amps: "i",
  watts: "w",
  ohms: "ohms",
  farads: "farads",
  ratio: "tol",
  hertz: "hz",
  metres: "length",
  celsius: "celsius",
};

const AT_THE_END = UNITS.map(
  ([written, measure, factor]) => [new RegExp(`(?:_|(?<=^ |[a-z0-9Ωµ]))(?:${written})$`), measure, factor] as const,
);

/**
 * Every way to read a key: without each unit that it may end in, as it stands, and as nothing but a unit.
 *
 * @example unitless("peakV")[0] // { name: "pea", ... }, read on until a name is known
 */
export function unitless(key: string): readonly Unitless[] {
  const units = AT_THE_END.flatMap(([unit, measure, factor]) => {
    const name = ` ${key}`.replace(unit, "").trim();
    return name === key ? [] : [{ name: plain(name), measure, factor }];
  });
  const bare = units.filter(({ name }) => name === "").map((read) => ({ ...read, name: BARE[read.measure] }));
  return [...units.filter(({ name }) => name !== ""), { name: plain(key), measure: null, factor: 1 }, ...bare];
}

/** The unit that a key ends in, the longest that fits; null where it ends in none. @example unitOf("mA") // { measure: "amps", factor: 0.001 } */
export function unitOf(key: string): (Pick<Unitless, "factor"> & { readonly measure: Measure }) | null {
  const rest = (unit: RegExp) => ` ${key}`.replace(unit, "").trim().length;
  const [longest] = AT_THE_END.filter(([unit]) => unit.test(` ${key}`)).sort(([a], [b]) => rest(a) - rest(b));
  return longest ? { measure: longest[1], factor: longest[2] } : null;
}

const plain = (key: string) => key.toLowerCase().replace(/[^a-z0-9µ]/g, "");

const FIGURE = new RegExp(
  `^\\s*[<>≈~]?\\s*(-?\\d*[.,]?\\d+(?:e-?\\d+)?)\\s*(?:${UNITS.map(([written]) => `(${written})`).join("|")})?\\s*$`,
);

/**
 * A figure written as text, in base units, and what its unit measures; null where it is none.
 *
 * @example figureOf("62 MΩ") // { number: 62e6, measure: "ohms" }
 */
export function figureOf(text: string): { readonly number: number; readonly measure: Measure | null } | null {
  const [, digits, ...units] = FIGURE.exec(text) ?? [];
  if (digits === undefined) return null;
  const unit = UNITS[units.findIndex((each) => each !== undefined)];
  const number = Number(digits.replace(",", "."));
  return { number: unit ? Number((number * unit[2]).toPrecision(12)) : number, measure: unit?.[1] ?? null };
}
