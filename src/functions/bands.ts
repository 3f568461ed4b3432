import * as core from "../core/index.js";
import { allowed, amount, choice, count, rating, size, text } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * The colour code that a part carries.
 * @customenum {string}
 */
export enum BandCode {
  Resistor = "resistor",
  Reliability = "reliability",
  BodyEndDot = "body-end-dot",
  MicaTypeFirst = "mica, type first",
  MicaThreeFigures = "mica, three figures",
  MicaThreeDots = "mica, three dots",
  MouldedPaper = "moulded paper",
  Ceramic = "ceramic",
}

/**
 * The value in ohms or farads that the colours of a part say, with its tolerance and all else they tell.
 * @customfunction BAND_DECODE
 * @helpurl reference.html#BAND_DECODE
 * @param colours The colours in order, such as yellow violet orange gold, or YE VT OG GD; a dash is a missing one. Six dots: the upper row from left to right, then the lower one, held with the arrow to the right.
 * @param code The code: resistor with 3 to 6 bands (when left out), reliability (a military part's fifth band), body-end-dot, mica, type first, mica, three figures, mica, three dots, moulded paper or ceramic (temperature first).
 * @returns Ohms or farads, the tolerance, and in words whatever else is known; also what the bands say from the other end, where that works too.
 * @example LUG.BAND_DECODE("yellow violet orange gold") -> {47000, "±5 %", ""}
 */
export function bandDecode(colours: unknown[][], code?: BandCode[][]): unknown[][] {
  return spill([text(colours), choice(code, "code", core.BAND_CODES, "resistor")], (colours, code) => {
    const { reading, turned } = core.decodeBands(colours, code);
    const tolerance = reading.tolerance ? core.writeTolerance(reading.tolerance) : "";
    return [[reading.value, tolerance, core.readingInWords(reading, turned)]];
  });
}

/**
 * The colours that a part of a value (ohms or farads) carries, in any of the codes that BAND_DECODE reads.
 * @customfunction BAND_ENCODE
 * @helpurl reference.html#BAND_ENCODE
 * @param value The value: a number in ohms or farads, or text such as 47 k or 0.022 uF.
 * @param tolerance A ratio such as 5% (when left out), or text; 20% has no band on a resistor.
 * @param bands Of a resistor: 4 (two figures), 5 (three figures) or 6 (with a temperature coefficient); as few as will do when left out.
 * @param ppm The temperature coefficient in millionths for each kelvin: for six bands, and for ceramics.
 * @param code The code, by the names of BAND_DECODE: resistor when left out.
 * @param volts The rating in volts, where the code writes one: moulded paper, and mica, three figures.
 * @param failures Failures in 1000 hours as a ratio such as 0.1%, for reliability.
 * @param characteristic The letter A to F of a mica's temperature class, for mica, type first.
 * @returns The colours in order, as text.
 * @example LUG.BAND_ENCODE("47 k", 5%) -> "yellow violet orange gold"
 */
export function bandEncode(
  value: unknown[][],
  tolerance?: unknown[][],
  bands?: unknown[][],
  ppm?: unknown[][],
  code?: BandCode[][],
  volts?: unknown[][],
  failures?: unknown[][],
  characteristic?: unknown[][],
): unknown[][] {
  return each(
    [
      size(value, "value"),
      allowed(tolerance, "tolerance", { minus: 0.05, plus: 0.05 }),
      count(bands, "bands", null),
      amount(ppm, "ppm", undefined),
      choice(code, "code", core.BAND_CODES, "resistor"),
      rating(volts, "volts", "volt", null),
      rating(failures, "failures", "ratio", null),
      text(characteristic, null),
    ],
    (value, tolerance, bands, ppmPerKelvin, code, volts, failures, characteristic) => {
      const part = { value, tolerance, ppmPerKelvin, volts, failures, characteristic };
      if (code !== "resistor") return inWords(core.encodeCode(part, code));
      return inWords(core.encodeBands({ ohms: value, tolerance, ppmPerKelvin }, bands));
    },
  );
}

/** Colours as text; bands that are not there are left out at the end, and named elsewhere. */
function inWords(colours: readonly core.Colour[]): string {
  return colours.join(" ").replace(/( none)+$/, "");
}
