import { rungFor } from "../circuit/ladder.js";
import { stringShare } from "../circuit/stringShare.js";
import { inSpan } from "../quantity/inSpan.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Piece } from "../ratings.js";
import { ELECTROLYTIC_FARADS, LADDERS } from "../rules/ladders.js";
import type { Technology } from "../rules/technology.js";
import { balancersFor } from "./balancersFor.js";
import type { Need } from "./need.js";

/** A capacitor pair in series, what balances each of the two ("470 k"), and the volts the smaller may have to bear. */
export type SeriesPair = { readonly aim: Aim; readonly balancing: string; readonly shareVolts: number };

/**
 * Two equal electrolytics in series with balancing resistors, for volts that no single one survives; null where none
 * serves, or where nothing that is made balances them.
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
  const balancers = balancersFor({ farads, ratedVolts: rated, volts }, need.settings);
  if (balancers.length === 0) return null;
  const capacitor: Piece = {
    value: farads,
    tolerance: { minus: spread, plus: spread },
    watts: null,
    volts: rated,
    technology: technology.id,
  };
  const text = writeValue(farads, "capacitor");
  const balancing = balancers.map(({ value }) => writeValue(value!, "resistor")).join(" + ");
  const pieces = [capacitor, capacitor, ...balancers, ...balancers];
  return { aim: { pieces, text: `${text} + ${text}` }, balancing, shareVolts };
}
