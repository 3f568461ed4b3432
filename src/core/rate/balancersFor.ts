import { rungFor } from "../circuit/ladder.js";
import { leastRating } from "../circuit/leastRating.js";
import { inSpan } from "../quantity/inSpan.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import type { Piece } from "../ratings.js";
import type { Settings } from "../rule.js";
import { LADDERS } from "../rules/ladders.js";
import { technologyOf } from "../rules/technologies.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";

/** One of two equal electrolytics in series, and the volts across both. */
export type OneOfPair = { readonly farads: number; readonly ratedVolts: number; readonly volts: number };

/** Balancing resistors above this hardly load the supply's leakage away. Common practice. */
const MOST_BALANCING_OHMS = 470_000;

/** What balances, in order: film where its body bears the volts, wire where it takes more watts. */
const TECHNOLOGIES = ["metal_film", "wirewound"].map(technologyOf).filter((each) => each !== undefined);

/** More resistors across one capacitor than these are no way to build a supply. */
const MOST_ACROSS_ONE = 2;

const TOLERANCE = { minus: 0.05, plus: 0.05 };

/**
 * The resistor across each of two equal electrolytics in series that keeps their shares within their ratings.
 *
 * R = (2 Vr - V) / (0.0015 C V), in megohms with microfarads: how far leakages may differ grows with C and V; never
 * above 470 k.
 *
 * @see a maker's application guide for aluminium electrolytics, from memory
 * @example balancingOhmsFor({ farads: 68e-6, ratedVolts: 350, volts: 520 }) // 470_000
 */
export function balancingOhmsFor(pair: OneOfPair): number {
  const spare = Math.max(2 * pair.ratedVolts - pair.volts, 0.1 * pair.ratedVolts);
  const ohms = (spare / (0.0015 * pair.farads * 1e6 * pair.volts)) * 1e6;
  return nearest(Math.min(ohms, MOST_BALANCING_OHMS), SERIES.E12, "not above");
}

/**
 * What goes across one of two electrolytics in series: one resistor, or two equal ones in series where no body bears its
 * volts; none where nothing that is made serves. Its rated volts stand across it for good.
 *
 * @example balancersFor({ farads: 2.2e-6, ratedVolts: 420, volts: 667 }, settings).length // 2
 */
export function balancersFor(pair: OneOfPair, settings: Settings): readonly Piece[] {
  const ohms = balancingOhmsFor(pair);
  for (let pieces = 1; pieces <= MOST_ACROSS_ONE; pieces++) {
    const value = nearest(ohms / pieces, SERIES.E12, "not above");
    for (const technology of TECHNOLOGIES) {
      const piece = balancer(technology, value, pair.ratedVolts / pieces, settings);
      if (piece) return Array.from({ length: pieces }, () => piece);
    }
  }
  return [];
}

function balancer(technology: Technology, value: number, volts: number, settings: Settings): Piece | null {
  if (!technology.made || !inSpan(value, technology.made)) return null;
  const { body } = bodyFor(technology, {
    watts: rungFor(leastRating({ stress: volts ** 2 / value, share: Number(settings.res_load_max) }), LADDERS.res_W!),
    mostWatts: null,
    leastVolts: leastRating({ stress: volts, share: Number(settings.res_volt_max) }),
    wantVolts: null,
  });
  if (body === null) return null;
  return { kind: "resistor", value, tolerance: TOLERANCE, ...body, technology: technology.id };
}
