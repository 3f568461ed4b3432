import { PartsError } from "../../problem.js";
import { type BandReading, plainReading } from "./bandReading.js";
import { bandValue, meaningOf } from "./bandValue.js";
import type { Colour } from "./colours.js";
import { CERAMIC_FARADS, CERAMIC_POWERS, CERAMIC_PPM, CERAMIC_TOLERANCES } from "./colourTables.js";

const SMALL = 10e-12;

/**
 * A ceramic tubular whose first, wider band or dot is the temperature coefficient: then figure, figure, multiplier, tolerance.
 *
 * Up to 10 pF the tolerance band counts picofarads, above it percent.
 *
 * @throws PartsError "unreadable" when there are not five, or they make no such part.
 * @see JAN-C-20; EIA RS-198
 * @example readCeramicBands(["violet", "yellow", "violet", "black", "green"]).ppmPerKelvin // -750
 */
export function readCeramicBands(bands: readonly Colour[]): BandReading {
  const [temperature, first, second, multiplier, tolerance] = bands;
  if (!temperature || !first || !second || !multiplier || !tolerance || bands.length !== 5) {
    throw new PartsError("unreadable", bands.join(" "), "Give temperature, figure, figure, multiplier and tolerance.");
  }
  const value = bandValue([first, second], multiplier, -12, CERAMIC_POWERS);
  return {
    ...plainReading(value, "farad"),
    tolerance: value > SMALL ? meaningOf(tolerance, CERAMIC_TOLERANCES, "tolerance") : amount(tolerance, value),
    ppmPerKelvin: meaningOf(temperature, CERAMIC_PPM, "temperature"),
  };
}

function amount(colour: Colour, farads: number) {
  const ratio = meaningOf(colour, CERAMIC_FARADS, "tolerance") / farads;
  return { minus: ratio, plus: ratio };
}
