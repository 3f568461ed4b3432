import { PartsError } from "../problem.js";

/**
 * The resistor that makes up for the drop of a selenium stack when silicon takes its place: a value to start from.
 *
 * Old drop (about 1 V a plate when new) less silicon's 0.7 V, over the mean current. The ripple current heats it more than
 * the mean does, so the watts are a least figure; the final value is the one that gives the set's own B+ at today's line.
 *
 * @param stack Plates in series, volts lost in each, mean amperes, silicon's drop.
 * @returns Ohms, and watts at the mean current.
 * @throws PartsError "nothing-fits" when the stack loses no more than the silicon.
 * @see Bonkowski, Replacing Selenium Rectifiers; 1 V a plate is a rule of the trade
 * @example seleniumResistor({ plates: 5, amperes: 0.065 }).ohms // 66.15
 */
export function seleniumResistor(stack: {
  readonly plates: number;
  readonly amperes: number;
  readonly voltsPerPlate?: number;
  readonly siliconVolts?: number;
}): { readonly ohms: number; readonly watts: number; readonly dropVolts: number } {
  const dropVolts = stack.plates * (stack.voltsPerPlate ?? 1) - (stack.siliconVolts ?? 0.7);
  if (dropVolts <= 0) {
    throw new PartsError(
      "nothing-fits",
      `${stack.plates} plates`,
      "The stack must lose more volts than the silicon does.",
    );
  }
  return { ohms: dropVolts / stack.amperes, watts: dropVolts * stack.amperes, dropVolts };
}
