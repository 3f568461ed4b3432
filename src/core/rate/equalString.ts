import { rungFor } from "../circuit/ladder.js";
import type { Span } from "../part.js";
import { figures } from "../quantity/figures.js";
import { inSpan } from "../quantity/inSpan.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Aim, Rejected } from "../ratings.js";
import { LADDERS } from "../rules/ladders.js";
import { stockLists } from "../rules/stockValues.js";
import type { Technology } from "../rules/technology.js";
import { bodyFor } from "./bodyFor.js";
import type { Need } from "./need.js";
import { toleranceFor } from "./pickValue.js";

/** More in a row is a strip of its own, no longer a replacement. */
const MOST_IN_A_ROW = 10;

/**
 * A string of equal resistors whose pieces each bear their share of the volts; null where none serves.
 *
 * Equal pieces share volts and watts equally, so one line of an order makes the string up. The total lies in the
 * window, each piece is the nearest to its share of the value wanted.
 *
 * @example equalString(need, technologyOf("metal_film")!, 3)?.text // "1.6 M + 1.6 M + 1.6 M" for 4.7 M at 900 V
 */
export function equalString(need: Need, technology: Technology, pieces: number): Aim | null {
  const value = pieceValue(need, technology, pieces);
  if (value === null || need.volts.least === null) return null;
  const { body } = bodyFor(technology, {
    watts: wattsEach(need, pieces),
    mostWatts: null,
    leastVolts: need.volts.least / pieces,
    wantVolts: null,
  });
  if (body === null) return null;
  const tolerance = toleranceFor(value, shareOf(need.value.old, pieces), technology).tolerance;
  const piece = { value, tolerance, watts: body.watts, volts: body.volts, technology: technology.id };
  const text = Array.from({ length: pieces }, () => writeValue(value, "resistor")).join(" + ");
  return { pieces: Array.from({ length: pieces }, () => piece), text };
}

/** One piece's share of limits that the whole string is held to. */
const shareOf = (span: Span | null, pieces: number): Span | null =>
  span && { min: span.min / pieces, max: span.max / pieces };

/** The stock value nearest to one piece's share that keeps the string in the window. */
function pieceValue(need: Need, technology: Technology, pieces: number): number | null {
  const { wanted, window } = need.value;
  const made = technology.made;
  if (wanted === null || window === null || !made?.watts) return null;
  const share = shareOf(window, pieces)!;
  const off = (value: number) => Math.abs(Math.log((value * pieces) / wanted));
  const values = (stockLists(need.rule.series, technology, share)[0] ?? []).filter((value) => inSpan(value, made));
  return [...values].sort((a, b) => off(a) - off(b))[0] ?? null;
}

/** Watts of each piece: its share of the known loss at the load allowed, else its share of the rating wanted. */
function wattsEach(need: Need, pieces: number): number | null {
  const { lost, want } = need.watts;
  const total = lost === null ? want : lost / Number(need.settings.res_load_max);
  return total === null ? null : rungFor(total / pieces, LADDERS.res_W!);
}

/** The string of fewest pieces over several technologies (at equal length the earlier one), and the shorter ones turned down. */
export function shortestString(
  need: Need,
  technologies: readonly Technology[],
): { readonly aim: Aim | null; readonly rejected: readonly Rejected[] } {
  const rejected: Rejected[] = [];
  for (let pieces = 2; pieces <= MOST_IN_A_ROW; pieces++) {
    for (const technology of technologies) {
      const aim = equalString(need, technology, pieces);
      if (aim) return { aim, rejected };
    }
    const near = technologies.find((technology) => pieceValue(need, technology, pieces) !== null);
    if (near) rejected.push({ what: stringName(need, near, pieces), why: tooFew(need, pieces) });
  }
  return { aim: null, rejected };
}

const stringName = (need: Need, technology: Technology, pieces: number) =>
  `${pieces} of ${writeValue(pieceValue(need, technology, pieces)!, "resistor")} in series`;

function tooFew(need: Need, pieces: number): string {
  const each = figures(Number(((need.volts.stress ?? 0) / pieces).toPrecision(3)));
  return `${each} V on each is more than ${Number(need.settings.res_volt_max) * 100} % of any body`;
}
