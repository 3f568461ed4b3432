import { PartsError } from "../problem.js";

/** The ways to bring the line down to a string of heaters. */
export const DROP_METHODS = ["resistor", "diode", "capacitor"] as const;
export type DropMethod = (typeof DROP_METHODS)[number];

/** What drops the volts: ohms and the watts they burn, or farads; `dropVolts` is what lies across it, rms. */
export type HeaterDrop = {
  readonly dropVolts: number;
  readonly ohms: number | null;
  readonly watts: number | null;
  readonly farads: number | null;
};

/**
 * What must stand in series with a string of heaters so that they get their current.
 *
 * "Resistor": the line's volts less the string's, over the current. "Diode": one silicon diode and a smaller resistor; the
 * half wave's rms is 0.707 of the line and not half of it. "Capacitor": its volts stand at right angles to the heaters',
 * so squares are subtracted. A shorted diode puts the whole line on the string; a fuse belongs in it.
 *
 * @param string `heaterVolts` of the whole string, rms; `amperes` its current.
 * @throws PartsError "nothing-fits" when the string needs more volts than there are.
 * @see root mean square of a half wave: peak over 2
 * @example heaterDrop({ lineVolts: 117, heaterVolts: 68.9, amperes: 0.3, hertz: 60 }, "resistor").ohms // 160.3
 */
export function heaterDrop(
  string: {
    readonly lineVolts: number;
    readonly heaterVolts: number;
    readonly amperes: number;
    readonly hertz: number;
  },
  method: DropMethod,
): HeaterDrop {
  const { heaterVolts, amperes, hertz } = string;
  const supplied = method === "diode" ? string.lineVolts * Math.SQRT1_2 : string.lineVolts;
  if (supplied <= heaterVolts) {
    throw new PartsError(
      "nothing-fits",
      `${heaterVolts} V of heaters on ${string.lineVolts} V`,
      `This way gives the string ${supplied.toPrecision(4)} V at most.`,
    );
  }
  if (method === "capacitor") {
    const dropVolts = Math.sqrt(supplied ** 2 - heaterVolts ** 2);
    return { dropVolts, ohms: null, watts: null, farads: amperes / (2 * Math.PI * hertz * dropVolts) };
  }
  const dropVolts = supplied - heaterVolts;
  return { dropVolts, ohms: dropVolts / amperes, watts: dropVolts * amperes, farads: null };
}
