import { PartsError } from "../problem.js";

/**
 * What must lie in parallel with a resistor, given its readings lifted and in place.
 *
 * @param read Both in ohms.
 * @returns Ohms of the parallel path; infinite when both readings agree.
 * @throws PartsError "conflict" when it reads higher in place than lifted, which no parallel path can do.
 * @example parallelPath({ lifted: 100_000, inPlace: 50_000 }) // 100_000
 */
export function parallelPath(read: { readonly lifted: number; readonly inPlace: number }): number {
  refuseImpossible(read.inPlace <= read.lifted, read, "higher", "ohms");
  return 1 / (1 / read.inPlace - 1 / read.lifted);
}

/**
 * What must lie in parallel with a capacitor, given its readings lifted and in place.
 *
 * @param read Both in farads.
 * @returns Farads; 0 when both readings agree.
 * @throws PartsError "conflict" when it reads lower in place than lifted.
 * @example parallelFarads({ lifted: 10e-9, inPlace: 14e-9 }) // 4e-9
 */
export function parallelFarads(read: { readonly lifted: number; readonly inPlace: number }): number {
  refuseImpossible(read.inPlace >= read.lifted, read, "lower", "farads");
  return read.inPlace - read.lifted;
}

function refuseImpossible(
  possible: boolean,
  read: { readonly lifted: number; readonly inPlace: number },
  way: string,
  unit: string,
): void {
  if (possible && read.lifted > 0 && read.inPlace > 0) return;
  throw new PartsError(
    "conflict",
    `Lifted ${read.lifted} and in place ${read.inPlace} ${unit}`,
    `No parallel path makes it read ${way}: discharge, swap the leads and read both again.`,
  );
}
