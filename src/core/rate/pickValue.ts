import type { Span, Tolerance } from "../part.js";
import { inSpan } from "../quantity/inSpan.js";
import { nearest } from "../quantity/nearest.js";
import { SERIES } from "../quantity/series.js";
import { containment, windowOf } from "../quantity/window.js";
import { stockLists } from "../rules/stockValues.js";
import type { Technology } from "../rules/technology.js";
import type { Need } from "./need.js";

/** A value that is to be had and meets the limits, with the widest stock tolerance that stays within the old part's, and by how much it sticks out. */
export type Picked = { readonly value: number; readonly tolerance: Tolerance | null; readonly excess: number };

/** The side of the value wanted on which the rule would have the new one; its window may still allow the other. */
function sideOf({ mode }: Need["value"]): "below" | "above" | null {
  return mode === "not_below" ? "above" : mode === "not_above" ? "below" : null;
}

const isOn = (side: ReturnType<typeof sideOf>, value: number, wanted: number) =>
  side === null || (side === "above" ? value >= wanted * (1 - 1e-9) : value <= wanted * (1 + 1e-9));

/** How far a value lies from the one wanted, by the user's choice of what counts as nearest. */
const distance = (value: number, wanted: number, { settings }: Need) =>
  settings.nearest_by === "difference" ? Math.abs(value - wanted) / wanted : Math.abs(Math.log(value / wanted));

const even = (ratio: number): Tolerance => ({ minus: ratio, plus: ratio });

/** Values between those of E24 are made to 2 % and closer only. Common practice, after IEC 60063. */
const CLOSE = 0.02;

/** The tolerances a value is to be had in, widest first. */
function madeIn(value: number, technology: Technology): readonly number[] {
  const between = technology.finest === "E96" && Math.abs(nearest(value, SERIES.E24) / value - 1) > 1e-9;
  return between ? technology.tolerances.filter((ratio) => ratio <= CLOSE) : technology.tolerances;
}

/** The widest tolerance a technology is stocked in that keeps a value within the old limits; else the closest, with its excess. */
export function toleranceFor(value: number, old: Span | null, technology: Technology): Omit<Picked, "value"> {
  const made = madeIn(value, technology);
  if (made.length === 0) return { tolerance: null, excess: 0 };
  if (old === null) return { tolerance: even(made[0]!), excess: 0 };
  const sticksOut = (ratio: number) => {
    const { below, above } = containment(windowOf(value, even(ratio)), old);
    return Math.max(below, above);
  };
  const inside = made.find((ratio) => sticksOut(ratio) === 0);
  const closest = made[made.length - 1]!;
  return inside === undefined
    ? { tolerance: even(closest), excess: sticksOut(closest) }
    : { tolerance: even(inside), excess: 0 };
}

/** The values worth weighing, list by list: what the user has in stock, else what the technology is made in. */
function lists(need: Need, technology: Technology, window: Span): readonly (readonly number[])[] {
  if (need.stock) return [need.stock.filter((value) => inSpan(value, window))];
  return stockLists(need.rule.series, technology, window);
}

/**
 * The value to buy in a technology: the nearest in the window, in the coarsest series that has one; null where none has.
 *
 * With the gate `contained`, and where a value may be made up, a value counts only if some stock tolerance keeps it wholly
 * within the old part's limits. A rule that says "not below" has every series looked through for a value that is not.
 */
export function pickValue(need: Need, technology: Technology): Picked | null {
  const { wanted, window, old, mode } = need.value;
  if (wanted === null) return null;
  if (mode === "exact" || mode === "same") return { value: wanted, ...toleranceFor(wanted, old, technology) };
  if (window === null) return null;
  const side = sideOf(need.value);
  const all = lists(need, technology, window);
  const onSide = all.map((list) => list.filter((value) => isOn(side, value, wanted)));
  return firstOf(onSide, need, technology) ?? firstOf(all, need, technology);
}

function firstOf(all: readonly (readonly number[])[], need: Need, technology: Technology): Picked | null {
  const { wanted, old, mode } = need.value;
  const strict = need.rule.gate === "contained" || mode === "compose";
  for (const list of all) {
    const nearestFirst = [...list].sort((a, b) => distance(a, wanted!, need) - distance(b, wanted!, need));
    for (const value of nearestFirst) {
      const tolerance = toleranceFor(value, old, technology);
      if (!strict || tolerance.excess === 0) return { value, ...tolerance };
    }
  }
  return null;
}
