import { PartsError } from "../../problem.js";
import { type BandReading, plainReading } from "./bandReading.js";
import { bandValue } from "./bandValue.js";
import { type Colour, figureOf } from "./colours.js";
import { JAN_MICA_TOLERANCES, MICA_CHARACTERISTICS, RMA_MICA_TOLERANCES } from "./colourTables.js";

const PICO = -12;

/**
 * A mica capacitor with six dots whose first is the type (black military, white commercial; silver or the body's colour is paper).
 *
 * @param dots Upper row from left to right, then lower row from left to right, held so that the arrow points to the right:
 * type, figure, figure; characteristic, tolerance, multiplier.
 * @throws PartsError "unreadable" when there are not six, or they make no such part.
 * @see US Army OD1647; RETMA REC-115A; AN 16-40BC224-2 for 500 V up to 6800 pF, 300 V above
 * @example readTypeFirstMica(["white", "brown", "red", "black", "silver", "red"]).value // 1200e-12
 */
export function readTypeFirstMica(dots: readonly Colour[]): BandReading {
  const [type, first, second, characteristic, tolerance, multiplier] = six(dots);
  const value = bandValue([first, second], multiplier, PICO);
  const known = JAN_MICA_TOLERANCES[tolerance];
  const notes = [
    type === "black" || type === "white" ? "mica" : "silver or body-coloured first dot: paper, not mica",
    ...(known ? [] : [`the tolerance dot ${tolerance} is in no chart of this system`]),
  ];
  return {
    ...plainReading(value, "farad"),
    tolerance: known ?? null,
    volts: type === "black" ? (value <= 6_800e-12 ? 500 : 300) : null,
    characteristic: MICA_CHARACTERISTICS[characteristic] ?? null,
    notes,
  };
}

/**
 * A mica capacitor with six dots in the older code of three figures and a voltage.
 *
 * @param dots Held as above: figure, figure, figure; volts, tolerance, multiplier.
 * @throws PartsError "unreadable" when there are not six, or they make no such part.
 * @see RMA six-dot code
 * @example readThreeFigureMica(["black", "green", "brown", "red", "yellow", "black"]).value // 51e-12
 */
export function readThreeFigureMica(dots: readonly Colour[]): BandReading {
  const [first, second, third, volts, tolerance, multiplier] = six(dots);
  return {
    ...plainReading(bandValue([first, second, third], multiplier, PICO), "farad"),
    tolerance: RMA_MICA_TOLERANCES[tolerance] ?? null,
    volts: dotVolts(volts),
  };
}

/**
 * A mica capacitor with three dots: figure, figure, multiplier; it is 20 % and 500 V.
 *
 * @throws PartsError "unreadable" when there are not three, or they make no such part.
 * @see RMA three-dot code
 * @example readThreeDotMica(["red", "green", "black"]).value // 25e-12
 */
export function readThreeDotMica(dots: readonly Colour[]): BandReading {
  const [first, second, multiplier] = dots;
  if (!first || !second || !multiplier || dots.length !== 3) {
    throw new PartsError("unreadable", dots.join(" "), "This code has three dots.");
  }
  return {
    ...plainReading(bandValue([first, second], multiplier, PICO), "farad"),
    tolerance: RMA_MICA_TOLERANCES.none!,
    volts: 500,
  };
}

/** Hundreds of volts by figure; gold 1000 V, silver 2000 V, no dot 500 V. */
function dotVolts(colour: Colour): number | null {
  const figure = figureOf(colour);
  if (figure !== null) return figure > 0 ? figure * 100 : null;
  return { gold: 1000, silver: 2000, none: 500 }[colour as string] ?? null;
}

type Six = readonly [Colour, Colour, Colour, Colour, Colour, Colour];

function six(dots: readonly Colour[]): Six {
  if (dots.length !== 6)
    throw new PartsError("unreadable", dots.join(" "), "Give the upper row, then the lower row: six dots.");
  return dots as unknown as Six;
}
