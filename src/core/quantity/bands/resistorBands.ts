import { PartsError } from "../../problem.js";
import { type BandReading, plainReading } from "./bandReading.js";
import { bandValue, meaningOf } from "./bandValue.js";
import type { Colour } from "./colours.js";
import { FAILURES, RESISTOR_PPM, RESISTOR_TOLERANCES } from "./colourTables.js";

/**
 * A resistor with 3, 4, 5 or 6 bands: figures, multiplier, tolerance, temperature coefficient.
 *
 * How many bands there are decides: two figures up to four bands, three from five on. Three bands, or a fourth that is
 * missing, mean 20 %.
 *
 * @throws PartsError "unreadable" when the bands make no resistor.
 * @see IEC 60062; RETMA REC-116
 * @example readResistorBands(["yellow", "violet", "orange", "gold"]).value // 47_000
 */
export function readResistorBands(bands: readonly Colour[]): BandReading {
  if (bands.length < 3 || bands.length > 6) {
    throw new PartsError("unreadable", bands.join(" "), "A resistor has 3 to 6 bands.");
  }
  if (bands.length === 5 && bands[4] === "pink") return highStability(bands);
  const figures = bands.length >= 5 ? 3 : 2;
  const toleranceBand = bands[figures + 1] ?? "none";
  return {
    ...plainReading(bandValue(bands.slice(0, figures), bands[figures]!, 0), "ohm"),
    tolerance: meaningOf(toleranceBand, RESISTOR_TOLERANCES, "tolerance"),
    ppmPerKelvin: bands.length === 6 ? meaningOf(bands[5]!, RESISTOR_PPM, "temperature") : null,
    notes: notesOn(bands, toleranceBand),
  };
}

/**
 * A composition resistor of military make: four bands, and a fifth for failures in 1000 hours instead of a third figure.
 *
 * @throws PartsError "unreadable" when there are not five bands, or they make no such part.
 * @see MIL-R-39008; US Army OD1633
 * @example readReliabilityBands(["brown", "black", "red", "gold", "orange"]).failures // 0.0001
 */
export function readReliabilityBands(bands: readonly Colour[]): BandReading {
  if (bands.length !== 5) throw new PartsError("unreadable", bands.join(" "), "This code has five bands.");
  return {
    ...readResistorBands(bands.slice(0, 4)),
    failures: meaningOf(bands[4]!, FAILURES, "reliability"),
  };
}

function highStability(bands: readonly Colour[]): BandReading {
  const reading = readResistorBands(bands.slice(0, 4));
  return { ...reading, notes: [...reading.notes, "a salmon pink fifth band: British high stability, grade 1"] };
}

function notesOn(bands: readonly Colour[], toleranceBand: Colour): readonly string[] {
  const notes: string[] = [];
  if (bands.length === 4 && (toleranceBand === "orange" || toleranceBand === "yellow")) {
    notes.push(`old charts give ${toleranceBand === "orange" ? "orange 3 %" : "yellow 4 %"}`);
  }
  const likeComposition = bands.length === 5 && (bands[3] === "gold" || bands[3] === "silver");
  if (likeComposition && FAILURES[bands[4]!] !== undefined) {
    notes.push("on a military composition part the fifth band is reliability, and the fourth the tolerance");
  }
  return notes;
}
