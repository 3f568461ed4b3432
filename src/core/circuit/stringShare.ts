import { PartsError } from "../problem.js";

/**
 * How capacitors in series share volts at first and with alternating volts: each by one over its farads.
 *
 * It holds until leakage takes over; at dc the string settles to dcStringShare.
 *
 * @param farads Of each capacitor, in order.
 * @param volts Across the whole string.
 * @returns Volts across each, in the same order.
 * @throws PartsError "out-of-range" when a value is not positive.
 * @example stringShare([8e-6, 16e-6], 450) // [300, 150]
 */
export function stringShare(farads: readonly number[], volts: number): readonly number[] {
  return proportional(
    farads.map((each) => 1 / each),
    volts,
  );
}

/**
 * How capacitors in series share volts at dc: each by the ohms across it, its own leakage and the balancing resistor together.
 *
 * @param ohms Insulation of each capacitor, in order.
 * @param volts Across the whole string.
 * @param balancingOhms Of the resistor across each; null or left out where there is none.
 * @returns Volts across each, in the same order.
 * @throws PartsError "out-of-range" when a value is not positive.
 * @example dcStringShare([2e6, 1e6], 450) // [300, 150]
 */
export function dcStringShare(
  ohms: readonly number[],
  volts: number,
  balancingOhms: number | null = null,
): readonly number[] {
  const across = ohms.map((each) => (balancingOhms === null ? each : 1 / (1 / each + 1 / balancingOhms)));
  return proportional(across, volts);
}

function proportional(weights: readonly number[], volts: number): readonly number[] {
  if (weights.length === 0 || !weights.every((weight) => weight > 0 && Number.isFinite(weight))) {
    throw new PartsError(
      "out-of-range",
      weights.length ? "A value that is not positive" : "An empty string",
      "Give one positive value for each capacitor.",
    );
  }
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => (volts * weight) / sum);
}
