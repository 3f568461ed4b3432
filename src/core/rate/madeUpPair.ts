import { rungFor } from "../circuit/ladder.js";
import { type MadeUp, makeUp } from "../compose/makeUp.js";
import { type Network, networkValue, withValues } from "../compose/network.js";
import { writeNetwork } from "../compose/networkText.js";
import { stockOf } from "../compose/stock.js";
import type { Span, Tolerance } from "../part.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import type { Aim } from "../ratings.js";
import { LADDERS } from "../rules/ladders.js";
import { stockLists } from "../rules/stockValues.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";
import type { Need } from "./need.js";
import { toleranceFor } from "./pickValue.js";

/** A value made up from two, and others that serve as well, in words. */
export type PairFound = { readonly aim: Aim; readonly value: number; readonly others: readonly string[] };

/** A piece below this share of the whole does no more than its partner's tolerance. */
const LEAST_SHARE = 0.01;
/** Pairs weighed, and how much an uneven pair, a value outside E12 and a large pad count against exactness. Own choice. */
const WEIGHED = 24;
const UNEVEN = 0.2;
const RARE = 0.1;
const PADDED = 2;
const OTHERS = 3;

/**
 * A value made up from two stock values in a technology: resistors in series, capacitors in parallel; null where none serves.
 *
 * Of all pairs in the window the one that is near, even (two like pieces share the work) and made of values that every
 * shop has; in a tuned place a large piece and a small one that pads it, for the pad can be chosen by what the large one
 * reads. Where the rule holds the new range inside the old one, so do the pair's tolerances.
 *
 * @example madeUpPair(need, technologyOf("pp_film_foil")!)?.aim.text // "0.0047 µF || 0.0027 µF" for 0.0075 µF
 */
export function madeUpPair(need: Need, technology: Technology): PairFound | null {
  const { wanted, window, old } = need.value;
  const kind = need.part.kind;
  if (wanted === null || window === null || technology.made === null) return null;
  const values = pieceValues(need, technology, wanted);
  const strict = (need.rule.gate === "contained" || need.value.mode === "compose") && old !== null;
  for (const ratio of strict ? technology.tolerances : [null]) {
    const limits = ratio === null ? window : narrowed(window, old!, ratio);
    if (limits.min > limits.max) continue;
    const { found } = makeUp({
      kind,
      wanted,
      window: limits,
      stock: stockOf(values),
      leastParts: 2,
      mostParts: 2,
      only: kind === "resistor" ? "series" : "parallel",
      list: WEIGHED,
    });
    const slack = Math.min(-(need.rule.low ?? 0), need.rule.high ?? 0) || 1;
    const badness = pads(need) ? padBadness : pairBadness;
    const serving = [...found].sort((a, b) => badness(a, slack) - badness(b, slack));
    const tolerance = ratio === null ? null : { minus: ratio, plus: ratio };
    if (serving[0]) return pairOf(serving, need, technology, tolerance);
  }
  return null;
}

/**
 * What a sum of pieces of one tolerance may nominally be, so that it stays in the old limits with all of them at one end.
 * Limits met to the last digit are met, whatever rounding does to sums.
 */
function narrowed(window: Span, old: Span, ratio: number): Span {
  const min = Math.max(window.min, old.min / (1 - ratio));
  const max = Math.min(window.max, old.max / (1 + ratio));
  return { min: min * (1 - 1e-9), max: max * (1 + 1e-9) };
}

function pieceValues(need: Need, technology: Technology, wanted: number): readonly number[] {
  if (need.stock) return need.stock;
  const made: Span = technology.made!;
  const span = { min: Math.max(wanted * LEAST_SHARE, made.min), max: Math.min(wanted, made.max) };
  return span.min < span.max ? (stockLists(need.rule.series, technology, span).at(-1) ?? []) : [];
}

/** Whether the place is one that a restorer tunes: a large capacitor and its pad. */
const pads = ({ part, rule }: Need) => part.kind === "capacitor" && rule.cautions.includes("tuned_exact");

const isRare = (value: number) => Math.abs(nearest(value, SERIES.E12) / value - 1) > 1e-9;

/** How poor a pair is: how much of the slack its value uses up, how uneven it is, how rare its values are. */
function pairBadness({ off, parts }: MadeUp, slack: number): number {
  const [a = 1, b = 1] = parts.map(({ value }) => value);
  const rare = parts.filter(({ value }) => isRare(value)).length;
  return Math.abs(Math.log(1 + off)) / slack + UNEVEN * Math.abs(Math.log(a / b)) + RARE * rare;
}

/** How poor a large piece with its pad is: how far off, how much the pad has to make up, whether the large one is rare. */
function padBadness({ off, parts }: MadeUp, slack: number): number {
  const [large = 1, pad = 0] = parts.map(({ value }) => value).sort((a, b) => b - a);
  return Math.abs(Math.log(1 + off)) / slack + (PADDED * pad) / (large + pad) + (isRare(large) ? 1 : 0);
}

function pairOf(
  serving: readonly MadeUp[],
  need: Need,
  technology: Technology,
  strict: Tolerance | null,
): PairFound | null {
  const [best, ...rest] = serving;
  const kind = need.part.kind;
  const network = inOrder(best!);
  const values = best!.parts.map(({ value }) => value).sort((a, b) => b - a);
  const whole = networkValue(network, kind);
  const tolerance = strict ?? toleranceFor(whole, need.value.old, technology).tolerance;
  const pieces = values.map((value) => ({
    value,
    tolerance,
    technology: technology.id,
    ...ratingsOf(value / whole, need, technology),
  }));
  if (pieces.some((piece) => kind === "resistor" && piece.watts === null)) return null;
  const others = rest.slice(0, OTHERS).map((one) => writeNetwork(inOrder(one), kind));
  return { aim: { pieces, text: writeNetwork(network, kind) }, value: whole, others };
}

/** The pair as a network with the larger piece first. */
function inOrder({ network }: MadeUp): Network {
  const plain = withValues(network);
  const larger = (parts: readonly Network[]) =>
    [...parts].sort((a, b) => ("part" in a && "part" in b ? b.part - a.part : 0));
  if ("series" in plain) return { series: larger(plain.series) };
  return "parallel" in plain ? { parallel: larger(plain.parallel) } : plain;
}

/** Watts and volts of one piece: its share of a resistor's, the whole volts for a capacitor beside another. */
function ratingsOf(share: number, need: Need, technology: Technology): { watts: number | null; volts: number | null } {
  if (need.part.kind !== "resistor") return { watts: null, volts: need.volts.want };
  const { watts, volts } = need;
  const { body } = bodyFor(technology, {
    watts: watts.want === null ? null : rungFor(watts.want * share, LADDERS.res_W!),
    mostWatts: null,
    leastVolts: volts.least === null ? null : volts.least * share,
    wantVolts: volts.want === null ? null : volts.want * share,
  });
  return { watts: body?.watts ?? null, volts: body?.volts ?? null };
}
