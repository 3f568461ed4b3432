import { figures } from "../quantity/figures.js";

/**
 * The energy a charged capacitor holds: half its farads times its volts squared.
 *
 * @returns Joules.
 * @example storedEnergy({ farads: 20e-6, volts: 450 }) // 2.025
 */
export function storedEnergy(charged: { readonly farads: number; readonly volts: number }): number {
  return (charged.farads * charged.volts ** 2) / 2;
}

/**
 * The energy in words, ending in what must follow whatever the figure says.
 *
 * @example storedEnergyText({ farads: 20e-6, volts: 450 }) // "2.03 J at 450 V: discharge it, then prove 0 V"
 */
export function storedEnergyText(charged: { readonly farads: number; readonly volts: number }): string {
  const joules = figures(Number(storedEnergy(charged).toPrecision(3)));
  return `${joules} J at ${figures(charged.volts)} V: discharge it, then prove 0 V`;
}
