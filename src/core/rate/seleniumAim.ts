import { rungFor, stepUp } from "../circuit/ladder.js";
import { leastRating } from "../circuit/leastRating.js";
import { figures } from "../quantity/figures.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Piece } from "../ratings.js";
import { LADDERS } from "../rules/ladders.js";
import type { Need } from "./need.js";

/** Silicon and series resistor that take a selenium stack's place, with the figures behind them. */
export type SeleniumAim = {
  readonly aim: Aim;
  readonly figures: Readonly<Record<string, number>>;
  readonly because: readonly string[];
};

/** A plate drops about a volt when new, silicon 0.7 V: a rule of the trade. */
const VOLTS_PER_PLATE = 1;
const SILICON_VOLTS = 0.7;
/** Peaks heat the resistor as twice the mean current would: common practice. */
const PEAK_FACTOR = 2;
/** Where the load is not known: the usual start, 22 to 82 ohms are seen. */
const USUAL_OHMS = 68;
const USUAL_WATTS = 5;

/**
 * Silicon and a resistor to start from: R = dV / I, whose watts bear the current's peaks; the final value is the one that
 * gives the documented B+ at today's line.
 *
 * @see Bonkowski, Replacing Selenium Rectifiers; 22 to 82 ohms, 5 W seen on a restorers' forum
 */
export function seleniumAim(need: Need): SeleniumAim {
  const { place, settings } = need;
  const silicon: Piece = {
    value: null,
    tolerance: null,
    watts: null,
    volts: need.volts.want,
    technology: "silicon",
  };
  const dropVolts = place.dropVolts ?? (place.plates === null ? null : place.plates * VOLTS_PER_PLATE - SILICON_VOLTS);
  const resistor = resistorFor(dropVolts, place.loadAmps, Number(settings.res_load_max));
  const { ohms, watts } = resistor;
  const piece: Piece = {
    kind: "resistor",
    value: ohms,
    tolerance: { minus: 0.05, plus: 0.05 },
    watts,
    volts: null,
    technology: "wirewound",
  };
  const text = `silicon ${silicon.volts} V, ${writeValue(ohms, "resistor")} ${watts} W in series`;
  return {
    aim: { pieces: [silicon, piece], text },
    figures: { ...resistor.figures, reverseVolts: need.volts.least ?? 0 },
    because: [
      resistor.because,
      "trim the resistor until B+ at today's line is the documented one times the line's ratio, or less",
    ],
  };
}

type SeriesResistor = Pick<SeleniumAim, "figures"> & {
  readonly ohms: number;
  readonly watts: number;
  readonly because: string;
};

function resistorFor(dropVolts: number | null, loadAmps: number | null, load: number): SeriesResistor {
  if (dropVolts === null || loadAmps === null || dropVolts <= 0) {
    const because = `load or plates are not known: ${USUAL_OHMS} Ω ${USUAL_WATTS} W is the usual start, 22 to 82 Ω are seen`;
    return { ohms: USUAL_OHMS, watts: USUAL_WATTS, figures: {}, because };
  }
  const ohms = nearest(dropVolts / loadAmps, SERIES.E12);
  const lostWatts = (PEAK_FACTOR * loadAmps) ** 2 * ohms;
  const leastWatts = rungFor(leastRating({ stress: lostWatts, share: load }), LADDERS.res_W!);
  const watts = stepUp(leastWatts, LADDERS.res_W!, 1);
  const because = `${figures(Number(dropVolts.toPrecision(3)))} V to make up at ${loadAmps * 1000} mA; peaks burn ${figures(Number(lostWatts.toPrecision(3)))} W, so ${leastWatts} W at least and a step up`;
  return { ohms, watts, figures: { dropVolts, lostWatts, leastWatts }, because };
}
