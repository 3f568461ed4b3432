import { PartsError } from "../../problem.js";
import { type BandReading, plainReading } from "./bandReading.js";
import { bandValue, meaningOf } from "./bandValue.js";
import { type Colour, figureOf } from "./colours.js";
import { PAPER_TOLERANCES } from "./colourTables.js";

/**
 * A moulded paper tubular: figure, figure, multiplier, tolerance, then one or two bands for the volts.
 *
 * One voltage band counts hundreds; two are the first figures of a rating from 1000 V on.
 *
 * @throws PartsError "unreadable" when there are not four to six bands, or they make no such part.
 * @see moulded paper tubular code of RETMA's time
 * @example readPaperBands(["red", "red", "orange", "black", "yellow"]).volts // 400
 */
export function readPaperBands(bands: readonly Colour[]): BandReading {
  const [first, second, multiplier, tolerance, ...volts] = bands;
  if (!first || !second || !multiplier || !tolerance || bands.length > 6) {
    throw new PartsError("unreadable", bands.join(" "), "Give figure, figure, multiplier, tolerance, and the volts.");
  }
  return {
    ...plainReading(bandValue([first, second], multiplier, -12), "farad"),
    tolerance: meaningOf(tolerance, PAPER_TOLERANCES, "tolerance"),
    volts: hundreds(volts.filter((colour) => colour !== "none")),
  };
}

function hundreds(bands: readonly Colour[]): number | null {
  const figures = bands.map(figureOf);
  if (figures.length === 0 || figures.includes(null)) return null;
  return Number(figures.join("")) * 100;
}
