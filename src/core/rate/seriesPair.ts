import { rungFor } from "../circuit/ladder.js";
import { stringShare } from "../circuit/stringShare.js";
import { inSpan } from "../quantity/inSpan.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Piece } from "../ratings.js";
import { ELECTROLYTIC_FARADS, LADDERS } from "../rules/ladders.js";
import { technologyOf } from "../rules/technologies.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";
import type { Need } from "./need.js";

/** A capacitor pair in series, with what its balancing resistors are and do. */
export type SeriesPair = { readonly aim: Aim; readonly balancingOhms: number; readonly shareVolts: number };

/** Balancing resistors above this hardly load the supply's leakage away. Common practice. */
const MOST_BALANCING_OHMS = 470_000;
const BALANCING_TECHNOLOGY = "metal_film";

/**
 * The resistor across each of two equal electrolytics in series that keeps their shares within their ratings.
 *
 * R = (2 Vr - V) / (0.0015 C V), in megohms with microfarads: how far leakages may differ grows with C and V; never
 * above 470 k.
 *
 * @see a maker's application guide for aluminium electrolytics, from memory
 * @example balancingOhmsFor({ farads: 68e-6, ratedVolts: 350, volts: 520 }) // 470_000
 */
export function balancingOhmsFor(pair: {
  readonly farads: number;
  readonly ratedVolts: number;
  readonly volts: number;
}): number {
  const spare = Math.max(2 * pair.ratedVolts - pair.volts, 0.1 * pair.ratedVolts);
  const ohms = (spare / (0.0015 * pair.farads * 1e6 * pair.volts)) * 1e6;
  return nearest(Math.min(ohms, MOST_BALANCING_OHMS), SERIES.E12, "not above");
}

/**
 * Two equal electrolytics in series with balancing resistors, for volts that no single one survives; null where none serves.
 *
 * Where no pair lies between nominal and what the rectifier allows, its limit wins and the pair stays below nominal.
 * At switch-on the volts split by farads: with 20 % parts the smaller may take 60 % of them, and its rating bears that.
 *
 * @example seriesPair(need, technologyOf("alu_axial")!)?.aim.text // "68 µF + 68 µF" for 30 µF at 520 V
 */
export function seriesPair(need: Need, technology: Technology): SeriesPair | null {
  const { wanted, window } = need.value;
  const volts = need.volts.least;
  if (wanted === null || window === null || volts === null) return null;
  const values = need.stock ?? ELECTROLYTIC_FARADS;
  const off = (value: number) => Math.abs(Math.log(value / 2 / wanted));
  const inside = values.filter((value) => inSpan(value / 2, window));
  const below = need.value.mostFarads === null ? [] : values.filter((value) => value / 2 <= window.max);
  const [farads] = [...(inside.length > 0 ? inside : below)].sort((a, b) => off(a) - off(b));
  if (farads === undefined) return null;
  const spread = technology.tolerances[0] ?? 0;
  const [shareVolts = volts] = stringShare([farads * (1 - spread), farads * (1 + spread)], volts);
  const rungs = LADDERS.elec_V!;
  if (shareVolts > rungs.at(-1)!) return null;
  const rated = rungFor(shareVolts, rungs);
  const balancingOhms = balancingOhmsFor({ farads, ratedVolts: rated, volts });
  const capacitor: Piece = {
    value: farads,
    tolerance: { minus: spread, plus: spread },
    watts: null,
    volts: rated,
    technology: technology.id,
  };
  const balancer = balancerOf(balancingOhms, rated, Number(need.settings.res_load_max));
  const text = writeValue(farads, "capacitor");
  const pieces = [capacitor, capacitor, ...(balancer ? [balancer, balancer] : [])];
  return { aim: { pieces, text: `${text} + ${text}` }, balancingOhms, shareVolts };
}

/** The balancing resistor as a piece: it bears its capacitor's rated volts for good. */
function balancerOf(ohms: number, ratedVolts: number, load: number): Piece | null {
  const technology = technologyOf(BALANCING_TECHNOLOGY)!;
  const watts = rungFor(ratedVolts ** 2 / ohms / load, LADDERS.res_W!);
  const { body } = bodyFor(technology, { watts, mostWatts: null, leastVolts: ratedVolts / 0.8, wantVolts: null });
  if (body === null) return null;
  return {
    kind: "resistor",
    value: ohms,
    tolerance: { minus: 0.05, plus: 0.05 },
    watts: body.watts,
    volts: body.volts,
    technology: technology.id,
  };
}
