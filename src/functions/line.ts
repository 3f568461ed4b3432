import * as core from "../core/index.js";
import { choice, rating } from "./ask.js";
import { spill } from "./cell.js";

/**
 * Where a capacitor stands at the line.
 * @customenum {string}
 */
export enum LinePlace {
  LineToLine = "line to line",
  LineToMetal = "line to metal",
  LineToHand = "line to hand",
}

const setting = (key: string) => Number(core.defaultSettings[key]);

/**
 * The current in amperes that a sound capacitor passes from the line; a figure to look at, no approval of safety.
 * @customfunction LINE_LEAK
 * @helpurl reference.html#LINE_LEAK
 * @param farads The capacitor: a number in farads, or text such as 0.01 uF.
 * @param lineVolts Your line today: 123 V when left out.
 * @param hertz The line's frequency: 60 hertz when left out.
 * @param plus How far the part may be above its value, as a ratio: 20% when left out.
 * @returns Amperes rms at the printed value, and at the top of the tolerance.
 * @example LUG.LINE_LEAK("0.01 uF", 120) -> {0.000452389342, 0.000542867211}
 */
export function lineLeak(
  farads: unknown[][],
  lineVolts?: unknown[][],
  hertz?: unknown[][],
  plus?: unknown[][],
): unknown[][] {
  return spill(
    [
      rating(farads, "farads", "farad"),
      rating(lineVolts, "lineVolts", "volt", setting("line_now_V")),
      rating(hertz, "hertz", "hertz", setting("line_hz")),
      rating(plus, "plus", "ratio", 0.2),
    ],
    (farads, volts, hertz, plus) => {
      const amperes = core.lineLeak({ farads, volts, hertz });
      return [[amperes, amperes * (1 + plus)]];
    },
  );
}

/**
 * The classes of capacitor that may stand at a place at the line (of 50 or 60 hertz), best first, with the reason; local codes decide what is allowed, and who may do it.
 * @customfunction XY_CLASS
 * @helpurl reference.html#XY_CLASS
 * @param place line to line (also across the switch), line to metal (chassis or earth), or line to hand (nothing else stands between).
 * @returns The classes that serve, and why.
 * @example LUG.XY_CLASS("line to metal") -> {"Y2, Y1", "When it fails the chassis is at the line: only a Y part may bridge basic insulation, never an X part."}
 */
export function xyClass(place: LinePlace[][]): unknown[][] {
  return spill([choice(place, "place", core.LINE_PLACES)], (place) => {
    const { classes, because } = core.xyClass(place);
    return [[classes.join(", "), because]];
  });
}

/**
 * The energy in joules that a charged capacitor holds; the text beside it says what must follow.
 * @customfunction STORED_ENERGY
 * @helpurl reference.html#STORED_ENERGY
 * @param farads The capacitor: a number in farads, or text such as 20 uF.
 * @param volts The volts it is charged to.
 * @returns Joules, and the same in words.
 * @example LUG.STORED_ENERGY("20 uF", 450) -> {2.025, "2.03 J at 450 V: discharge it, then prove 0 V"}
 */
export function storedEnergy(farads: unknown[][], volts: unknown[][]): unknown[][] {
  return spill([rating(farads, "farads", "farad"), rating(volts, "volts", "volt")], (farads, volts) => [
    [core.storedEnergy({ farads, volts }), core.storedEnergyText({ farads, volts })],
  ]);
}

/**
 * The seconds in which a capacitor falls to a given voltage through its bleeder; the text beside it says what must follow.
 * @customfunction BLEED_TIME
 * @helpurl reference.html#BLEED_TIME
 * @param farads The capacitor: a number in farads, or text such as 20 uF.
 * @param ohms The bleeder: a number in ohms, or text such as 100 k.
 * @param fromVolts The volts it starts from.
 * @param toVolts The volts to fall to, above 0: 50 V when left out.
 * @returns Seconds, and the same in words.
 * @example LUG.BLEED_TIME("20 uF", "100 k", 450) -> {4.39444915, "4.4 s to 50 V: wait, then prove 0 V"}
 */
export function bleedTime(
  farads: unknown[][],
  ohms: unknown[][],
  fromVolts: unknown[][],
  toVolts?: unknown[][],
): unknown[][] {
  return spill(
    [
      rating(farads, "farads", "farad"),
      rating(ohms, "ohms", "ohm"),
      rating(fromVolts, "fromVolts", "volt"),
      rating(toVolts, "toVolts", "volt", 50),
    ],
    (farads, ohms, fromVolts, toVolts) => {
      const bleed = { farads, ohms, fromVolts, toVolts };
      return [[core.bleedTime(bleed), core.bleedTimeText(bleed)]];
    },
  );
}
