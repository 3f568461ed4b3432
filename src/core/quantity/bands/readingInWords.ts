import { writeTolerance } from "../tolerance.js";
import { writeValue } from "../writeValue.js";
import type { BandReading } from "./bandReading.js";

/**
 * All that a reading says besides value and tolerance, in words, and what the same bands say from the other end.
 *
 * @example readingInWords(decodeBands("red green black", "mica, three dots").reading, null) // "500 V"
 */
export function readingInWords(reading: BandReading, turned: BandReading | null): string {
  const { ppmPerKelvin, failures, volts, characteristic, unit } = reading;
  const sign = unit === "ohm" ? "±" : "";
  return [
    ppmPerKelvin === null ? "" : `${sign}${ppmPerKelvin} ppm/K`,
    failures === null ? "" : `${Number((failures * 100).toPrecision(6))} % fail in 1000 h`,
    volts === null ? "" : `${volts} V`,
    characteristic === null ? "" : `characteristic ${characteristic}`,
    ...reading.notes,
    turned ? `from the other end ${shortly(turned)}` : "",
  ]
    .filter((words) => words !== "")
    .join("; ");
}

function shortly({ value, unit, tolerance }: BandReading): string {
  const size = value > 0 ? writeValue(value, unit === "ohm" ? "resistor" : "capacitor") : "0";
  return tolerance ? `${size} ${writeTolerance(tolerance)}` : size;
}
