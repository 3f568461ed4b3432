import type { Tolerance } from "../../part.js";

/** What the bands or dots of a part say; what they do not say is null. */
export type BandReading = {
  /** Ohms or farads. */
  readonly value: number;
  readonly unit: "ohm" | "farad";
  readonly tolerance: Tolerance | null;
  /** Change with temperature, in millionths for each kelvin; on resistors it goes both ways. */
  readonly ppmPerKelvin: number | null;
  /** Failures a part in 1000 hours, as a ratio: 0.01 is 1 %. */
  readonly failures: number | null;
  readonly volts: number | null;
  /** The letter of a mica's temperature and drift class. */
  readonly characteristic: string | null;
  readonly notes: readonly string[];
};

/** A reading that says nothing but its value, to build on. */
export function plainReading(value: number, unit: "ohm" | "farad"): BandReading {
  return {
    value,
    unit,
    tolerance: null,
    ppmPerKelvin: null,
    failures: null,
    volts: null,
    characteristic: null,
    notes: [],
  };
}
