import { PartsError } from "../problem.js";
import { figures } from "../quantity/figures.js";

/** A capacitor that empties through a resistor, from one voltage to a lower one. */
export type Bleed = {
  readonly farads: number;
  readonly ohms: number;
  readonly fromVolts: number;
  readonly toVolts: number;
};

/**
 * The time in which a capacitor falls from one voltage to another through its bleeder: R C ln(from / to).
 *
 * It never reaches zero by itself, and electrolytics recover some charge afterwards: no figure stands in for the meter.
 *
 * @returns Seconds; 0 when it is already there.
 * @throws PartsError "out-of-range" when the end voltage is not above zero.
 * @example bleedTime({ farads: 20e-6, ohms: 100_000, fromVolts: 450, toVolts: 50 }) // 4.394
 */
export function bleedTime({ farads, ohms, fromVolts, toVolts }: Bleed): number {
  if (!(toVolts > 0)) {
    throw new PartsError(
      "out-of-range",
      `${toVolts} V`,
      "Ask for a voltage above zero; zero is never reached by waiting.",
    );
  }
  return Math.max(0, ohms * farads * Math.log(fromVolts / toVolts));
}

/**
 * The volts that are left on a capacitor after it has emptied through a resistor for some seconds.
 *
 * @example voltsAfter({ farads: 20e-6, ohms: 100_000, fromVolts: 450, seconds: 2 }) // 165.5, one time constant
 */
export function voltsAfter(bleed: Omit<Bleed, "toVolts"> & { readonly seconds: number }): number {
  return bleed.fromVolts * Math.exp(-bleed.seconds / (bleed.ohms * bleed.farads));
}

/**
 * The bleed time in words, ending in what must follow whatever the figure says.
 *
 * @example bleedTimeText({ farads: 20e-6, ohms: 1e5, fromVolts: 450, toVolts: 50 }) // "4.4 s to 50 V: wait, then prove 0 V"
 */
export function bleedTimeText(bleed: Bleed): string {
  const seconds = Math.ceil(bleedTime(bleed) * 10) / 10;
  return `${figures(seconds)} s to ${figures(bleed.toVolts)} V: wait, then prove 0 V`;
}
