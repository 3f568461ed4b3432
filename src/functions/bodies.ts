import * as core from "../core/index.js";
import { anything, rating, text } from "./ask.js";
import { spill } from "./cell.js";

/**
 * Whether a part's body goes into the room there is, such as an old shell, and how many metres are left over.
 * @customfunction BODY_FITS
 * @helpurl reference.html#BODY_FITS
 * @param length The body's length: a number in metres, or text such as 19 mm.
 * @param diameter The body's diameter, likewise.
 * @param roomLength The length of the room, likewise.
 * @param roomDiameter The diameter of the room, likewise.
 * @param clear Room to leave free all round, for sleeving, wax or heat: 0 metres when left out.
 * @returns TRUE or FALSE, then the metres left over in length and in diameter; below 0 they are missing.
 * @example LUG.BODY_FITS("19 mm", "8 mm", "38 mm", "14 mm") -> {TRUE, 0.019, 0.006}
 */
export function bodyFits(
  length: unknown[][],
  diameter: unknown[][],
  roomLength: unknown[][],
  roomDiameter: unknown[][],
  clear?: unknown[][],
): unknown[][] {
  return spill(
    [
      rating(length, "length", "metre"),
      rating(diameter, "diameter", "metre"),
      rating(roomLength, "roomLength", "metre"),
      rating(roomDiameter, "roomDiameter", "metre"),
      rating(clear, "clear", "metre", 0),
    ],
    (lengthMetres, diameterMetres, roomLength, roomDiameter, clear) => {
      const room = { lengthMetres: roomLength, diameterMetres: roomDiameter };
      const fit = core.bodyFits({ lengthMetres, diameterMetres }, room, clear);
      return [[fit.fits, fit.lengthLeftMetres, fit.diameterLeftMetres]];
    },
  );
}

/**
 * The volts and amperes of a dial lamp by its type number, with its bead and base.
 * @customfunction LAMP
 * @helpurl reference.html#LAMP
 * @param type The type number, such as 47 or #47.
 * @returns Volts as printed, amperes, the bead's colour, the base, and the types that differ in nothing but the base; in a string of heaters the amperes have to be the old lamp's.
 * @example LUG.LAMP(47) -> {"6-8", 0.15, "brown", "bayonet", "40"}
 */
export function lamp(type: unknown[][]): unknown[][] {
  return spill([anything(type)], (type) => {
    const { lamp, alike } = core.dialLamp(String(type));
    return [[lamp.volts, lamp.amps, lamp.bead, lamp.base, alike.join(", ")]];
  });
}

/**
 * The sections of a can capacitor in farads and volts, one a row, read from the way lists print them.
 * @customfunction CAN_SECTIONS
 * @helpurl reference.html#CAN_SECTIONS
 * @param can Text such as 20-20/150, or 40-40-20 mfd, 450-450-25 V; figures without a unit are microfarads.
 * @returns A row for each section: its letter where one is printed, farads, volts.
 * @example LUG.CAN_SECTIONS("20-20/150") -> {"", 0.00002, 150; "", 0.00002, 150}
 */
export function canSections(can: unknown[][]): unknown[][] {
  return spill([text(can)], (can) =>
    core.canSections(can).map(({ suffix, farads, volts }) => [suffix ?? "", farads ?? "", volts ?? ""]),
  );
}
