import type { Tolerance } from "../../part.js";
import { PartsError } from "../../problem.js";
import { COLOURS, type Colour } from "./colours.js";
import { type ColourTable, MULTIPLIER_POWERS, RESISTOR_PPM, RESISTOR_TOLERANCES } from "./colourTables.js";

/**
 * The bands that a resistor of a value and tolerance carries.
 *
 * @param resistor `ohms`, `tolerance` (20 % is no band), `ppmPerKelvin` for a sixth band.
 * @param bands 4 (two figures; at 20 % the fourth is "none"), 5 (three figures) or 6 (with the temperature coefficient);
 * null: as few as will do.
 * @throws PartsError "nothing-fits" when the value has more figures than the bands, or a figure has no colour,
 * "out-of-range" for another number of bands.
 * @see IEC 60062
 * @example encodeBands({ ohms: 47_000, tolerance: { minus: 0.05, plus: 0.05 } }, 4) // ["yellow", "violet", "orange", "gold"]
 */
export function encodeBands(
  resistor: { readonly ohms: number; readonly tolerance: Tolerance; readonly ppmPerKelvin?: number },
  bands: number | null = null,
): readonly Colour[] {
  if (bands === null) return encodeInFewest(resistor);
  if (bands !== 4 && bands !== 5 && bands !== 6) {
    throw new PartsError("out-of-range", `${bands} bands`, "Ask for 4, 5 or 6 bands; 20 % in 4 leaves the fourth out.");
  }
  const { figures, power } = figuresAndPower(resistor.ohms, bands === 4 ? 2 : 3, "ohms");
  const colours = figures.map((figure) => COLOURS[figure]!);
  const tolerance = colourFor(isSameTolerance(resistor.tolerance), RESISTOR_TOLERANCES, "tolerance");
  const all = [...colours, colourFor((each) => each === power, MULTIPLIER_POWERS, "multiplier"), tolerance];
  if (bands < 6) return all;
  return [...all, colourFor((each) => each === resistor.ppmPerKelvin, RESISTOR_PPM, "temperature coefficient")];
}

/** Six bands where a temperature coefficient is asked for, else four where two figures are enough, else five. */
function encodeInFewest(resistor: Parameters<typeof encodeBands>[0]): readonly Colour[] {
  if (resistor.ppmPerKelvin !== undefined) return encodeBands(resistor, 6);
  const twoFigures = Number(resistor.ohms.toPrecision(2));
  return encodeBands(resistor, Math.abs(twoFigures - resistor.ohms) <= resistor.ohms * 1e-9 ? 4 : 5);
}

/**
 * The figures of a value, so many, and the power of ten they are multiplied by.
 *
 * @throws PartsError "nothing-fits" when the value has more figures, or is not above 0
 * @example figuresAndPower(47_000, 2, "ohms") // { figures: [4, 7], power: 3 }
 */
export function figuresAndPower(
  value: number,
  count: number,
  unit: string,
): { readonly figures: readonly number[]; readonly power: number } {
  const written = value.toExponential(12);
  const whole = Math.round(Number(written.slice(0, written.indexOf("e"))) * 10 ** (count - 1) * 1e6) / 1e6;
  if (!Number.isInteger(whole) || !(value > 0))
    throw new PartsError("nothing-fits", `${value} ${unit}`, `So many bands write ${count} figures.`);
  const power = Number(written.slice(written.indexOf("e") + 1)) - (count - 1);
  return { figures: [...String(whole)].map(Number), power };
}

/** Whether a colour's tolerance is this one. */
export function isSameTolerance({ minus, plus }: Tolerance): (each: Tolerance) => boolean {
  return (each) => Math.abs(each.minus - minus) < 1e-9 && Math.abs(each.plus - plus) < 1e-9;
}

/** The first colour of a table whose meaning fits. @throws PartsError "nothing-fits" when none does */
export function colourFor<T>(fits: (meaning: T) => boolean, table: ColourTable<T>, band: string): Colour {
  for (const colour in table) if (fits(table[colour as Colour] as T)) return colour as Colour;
  throw new PartsError("nothing-fits", `this ${band}`, `Colours there are ${Object.keys(table).join(", ")}.`);
}
