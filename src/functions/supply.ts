import * as core from "../core/index.js";
import { choice, rating } from "./ask.js";
import { each, spill } from "./cell.js";

/**
 * What kind of capacitor a rating is looked up for.
 * @customenum {string}
 */
export enum CapacitorKind {
  Film = "film",
  Electrolytic = "electrolytic",
  Ceramic = "ceramic",
  Mica = "mica",
}

/**
 * What brings the line down to a string of heaters.
 * @customenum {string}
 */
export enum DropMethod {
  Resistor = "resistor",
  Diode = "diode",
  Capacitor = "capacitor",
}

const LADDERS = {
  film: core.LADDERS.film_V!,
  electrolytic: core.LADDERS.elec_V!,
  ceramic: core.LADDERS.ceramic_V!,
  mica: core.LADDERS.mica_V!,
} as const;
const CAPACITORS = ["film", "electrolytic", "ceramic", "mica"] as const;
const setting = (key: string) => Number(core.defaultSettings[key]);

/**
 * The rating in volts to buy for a capacitor: it bears the old rating, the volts in service with their margin, and the warm-up peak.
 * @customfunction NEW_VOLTS
 * @helpurl reference.html#NEW_VOLTS
 * @param oldVolts The printed rating in volts; may be blank where one of the others is given.
 * @param kind film (when left out), electrolytic, ceramic or mica: which ratings are made.
 * @param steadyVolts The volts across it in service, peak where there is ripple or signal on them.
 * @param peakVolts The volts it must outlive while the tubes are cold; see WARMUP_PEAK.
 * @param share How much of the new rating the volts in service may use, as a ratio: 90% for an electrolytic and 100% for others when left out.
 * @param floorVolts The lowest rating bought at all.
 * @returns Volts.
 * @example LUG.NEW_VOLTS(300, "electrolytic", 320, 410) -> 420
 */
export function newVolts(
  oldVolts: unknown[][],
  kind?: CapacitorKind[][],
  steadyVolts?: unknown[][],
  peakVolts?: unknown[][],
  share?: unknown[][],
  floorVolts?: unknown[][],
): unknown[][] {
  return each(
    [
      rating(oldVolts, "oldVolts", "volt", null),
      choice(kind, "kind", CAPACITORS, "film"),
      rating(steadyVolts, "steadyVolts", "volt", null),
      rating(peakVolts, "peakVolts", "volt", null),
      rating(share, "share", "ratio", null),
      rating(floorVolts, "floorVolts", "volt", null),
    ],
    (oldVolts, kind, steadyVolts, peakVolts, asked, floorVolts) => {
      if (oldVolts === null && steadyVolts === null && peakVolts === null) return "";
      const share = asked ?? (kind === "electrolytic" ? setting("elec_volt_max") : 1);
      return core.newVolts({ oldVolts, steadyVolts, peakVolts, share, floorVolts }, LADDERS[kind]);
    },
  );
}

/**
 * The peak in volts that filter capacitors see before the tubes are warm: 1.414 times the winding, at today's line.
 * @customfunction WARMUP_PEAK
 * @helpurl reference.html#WARMUP_PEAK
 * @param windingVolts Volts rms from the centre tap to one end; of the whole winding before a bridge.
 * @param lineVolts Your line today: 123 V when left out.
 * @param designVolts The line the set was made for: 117 V when left out.
 * @returns Volts, without the drop of the rectifier.
 * @example LUG.WARMUP_PEAK(350, 117, 117) -> 494.974747
 */
export function warmupPeak(windingVolts: unknown[][], lineVolts?: unknown[][], designVolts?: unknown[][]): unknown[][] {
  return each(
    [
      rating(windingVolts, "windingVolts", "volt"),
      rating(lineVolts, "lineVolts", "volt", setting("line_now_V")),
      rating(designVolts, "designVolts", "volt", setting("line_design_V")),
    ],
    (windingVolts, lineVolts, designVolts) => core.warmupPeak({ windingVolts, lineVolts, designVolts }),
  );
}

/**
 * What must stand in series with a string of heaters on the line: ohms and their watts, or farads.
 * @customfunction HEATER_DROP
 * @helpurl reference.html#HEATER_DROP
 * @param heaterVolts The volts of the whole string, rms.
 * @param amperes The string's current, such as 0.15 or 150 mA.
 * @param method resistor (when left out), diode with a resistor (rms of the half wave is 0.707 of the line; fuse it, for a shorted diode puts the whole line on the string), or capacitor (one rated for the line: class X or a film motor-run part).
 * @param lineVolts Your line today: 123 V when left out.
 * @param hertz The line's frequency: 60 hertz when left out.
 * @returns Ohms (farads for a capacitor), then the watts that they turn to heat and the volts across them.
 * @example LUG.HEATER_DROP(69, 0.3, "resistor", 117) -> {160, 14.4, 48}
 */
export function heaterDrop(
  heaterVolts: unknown[][],
  amperes: unknown[][],
  method?: DropMethod[][],
  lineVolts?: unknown[][],
  hertz?: unknown[][],
): unknown[][] {
  return spill(
    [
      rating(heaterVolts, "heaterVolts", "volt"),
      rating(amperes, "amperes", "ampere"),
      choice(method, "method", core.DROP_METHODS, "resistor"),
      rating(lineVolts, "lineVolts", "volt", setting("line_now_V")),
      rating(hertz, "hertz", "hertz", setting("line_hz")),
    ],
    (heaterVolts, amperes, method, lineVolts, hertz) => {
      const drop = core.heaterDrop({ heaterVolts, amperes, lineVolts, hertz }, method);
      return [[drop.ohms ?? drop.farads!, drop.watts ?? 0, drop.dropVolts]];
    },
  );
}
