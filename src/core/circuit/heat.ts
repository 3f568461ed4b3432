import { PartsError } from "../problem.js";

/**
 * The share of its rated watts that a part may still carry in warm surroundings: 1 up to the knee, then falling in a straight line to 0.
 *
 * Temperatures in degrees Celsius. Film and composition parts of today hold full power to 70; the makers state the zero.
 *
 * @throws PartsError "conflict" when the zero does not lie above the knee.
 * @see IEC 60115-1 (shape of the curve); 70 to 155 °C is common for metal film
 * @example heatShare({ celsius: 112.5, kneeCelsius: 70, zeroCelsius: 155 }) // 0.5
 */
export function heatShare(curve: {
  readonly celsius: number;
  readonly kneeCelsius: number;
  readonly zeroCelsius: number;
}): number {
  const { celsius, kneeCelsius, zeroCelsius } = curve;
  if (zeroCelsius <= kneeCelsius) {
    throw new PartsError("conflict", `Knee ${kneeCelsius} and zero ${zeroCelsius}`, "The zero lies above the knee.");
  }
  return Math.min(1, Math.max(0, (zeroCelsius - celsius) / (zeroCelsius - kneeCelsius)));
}
