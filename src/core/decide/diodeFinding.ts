import { figures } from "../quantity/figures.js";
import type { Finding } from "./reading.js";

/** Sound forward drop in volts by class, and the least reverse ohms. Common practice, as in the tests of the class. */
const SOUND: Readonly<Record<string, { readonly min: number; readonly max: number; readonly reverseOhms: number }>> = {
  germanium_diode: { min: 0.2, max: 0.4, reverseOhms: 50e3 },
  silicon_rectifier: { min: 0.4, max: 0.7, reverseOhms: 1e6 },
};

/**
 * What a lifted diode's forward drop and reverse resistance say; null where the class has no such figures or none was read.
 *
 * @param read `forwardVolts` at about a milliampere, `reverseOhms`; null is not read.
 * @example diodeFinding("germanium_diode", { forwardVolts: 0.9, reverseOhms: null })?.bad // true
 */
export function diodeFinding(
  className: string,
  read: { readonly forwardVolts: number | null; readonly reverseOhms: number | null },
): Finding | null {
  const sound = SOUND[className];
  const { forwardVolts, reverseOhms } = read;
  if (!sound || (forwardVolts === null && reverseOhms === null)) return null;
  const dropsBad = forwardVolts !== null && (forwardVolts < sound.min || forwardVolts > sound.max);
  const leaks = reverseOhms !== null && reverseOhms < sound.reverseOhms;
  const drop =
    forwardVolts === null ? [] : [`drops ${figures(forwardVolts)} V (${sound.min} to ${sound.max} V is sound)`];
  const reverse = reverseOhms === null ? [] : [`${figures(reverseOhms / 1000)} k in reverse`];
  return { text: [...drop, ...reverse].join(", "), bad: dropsBad || leaks };
}
