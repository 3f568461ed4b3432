import { PartsError } from "../problem.js";

/** How hard a resistor works: the watts it turns to heat, the volts across it, and each as a share (1 is full) of its limit. */
export type Load = {
  readonly watts: number;
  readonly volts: number;
  readonly ofWatts: number;
  readonly ofVolts: number | null;
};

/**
 * The load of a resistor in its place, from the volts across it or the amperes through it.
 *
 * @param resistor Ohms, rated watts, and the body's limit in volts where known.
 * @param stress Volts (dc or rms) or amperes; exactly one of the two.
 * @returns Shares from 0; above 1 the part is overloaded. `ofVolts` is null where no limit is known.
 * @throws PartsError "conflict" when both volts and amperes, or neither, are given.
 * @example loadOf({ ohms: 220_000, watts: 0.5, bodyVolts: 350 }, { volts: 250 }) // ofWatts 0.568, ofVolts 0.714
 */
export function loadOf(
  resistor: { readonly ohms: number; readonly watts: number; readonly bodyVolts?: number | null },
  stress: { readonly volts?: number | null; readonly amperes?: number | null },
): Load {
  const given = [stress.volts, stress.amperes].filter((figure) => typeof figure === "number");
  if (given.length !== 1) {
    throw new PartsError("conflict", "Volts and amperes", "Give the volts across the part or the amperes through it.");
  }
  const volts = stress.volts ?? stress.amperes! * resistor.ohms;
  const watts = volts ** 2 / resistor.ohms;
  const ofVolts = resistor.bodyVolts ? Math.abs(volts) / resistor.bodyVolts : null;
  return { watts, volts, ofWatts: watts / resistor.watts, ofVolts };
}
