import type { Offer } from "../offer.js";
import { writeTolerance } from "../quantity/tolerance.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Ratings } from "../ratings.js";
import { fits, notesOn } from "./judge.js";
import type { Refusal } from "./matchOffers.js";
import type { Limit } from "./note.js";

/** One limit whose easing would let offers in: which, how far in words, and the offers. */
export type Easing = { readonly limit: Limit; readonly text: string; readonly offers: readonly Offer[] };

/** A step of easing: the ratings with one limit eased just far enough for one offer, in words, and its size as a ratio. */
type Step = { readonly ratings: Ratings; readonly words: string; readonly size: number };

/** Easings without a figure come after those with one. */
const WITHOUT_FIGURE = 1e9;

/** For each limit, how it eases for one offer; null where easing it is not sound. Safety classes are never eased. */
const EASE: Readonly<Partial<Record<Limit, (ratings: Ratings, offer: Offer) => Step | null>>> = {
  value: easeValue,
  volts: easeVolts,
  watts: easeWatts,
  tolerance: easeTolerance,
  technology: (ratings) => whole({ ...ratings, technologies: [] }, "another type"),
  temperature: (ratings) => whole({ ...ratings, temperatureCoefficient: null }, "another temperature code"),
  taper: (ratings) => whole({ ...ratings, taper: null }, "another taper"),
  size: (ratings) => whole({ ...ratings, room: null }, "more room"),
};

/**
 * For each limit, the least easing of it alone that would let an offer in; the smallest step first.
 *
 * An offer refused for two reasons helps no single easing. D.c. parts are never let into an a.c. place.
 *
 * @example easings(ratings, refused)[0]?.text // "With 500 V instead of 630 V, 3 would fit."
 */
export function easings(ratings: Ratings, refused: readonly Refusal[], pieces = 1): readonly Easing[] {
  const least = new Map<Limit, Step>();
  for (const { offer, notes } of refused) {
    const outs = notes.filter((note) => note.weight === "out");
    const limit = outs[0]!.limit;
    const step = outs.length === 1 ? EASE[limit]?.(ratings, offer) : null;
    const best = least.get(limit);
    if (step && (!best || step.size < best.size)) least.set(limit, step);
  }
  return [...least]
    .sort(([, a], [, b]) => a.size - b.size)
    .map(([limit, step]) => easingOf(limit, step, refused, pieces))
    .filter((easing) => easing.offers.length > 0);
}

function easingOf(limit: Limit, step: Step, refused: readonly Refusal[], pieces: number): Easing {
  const offers = refused.map(({ offer }) => offer).filter((offer) => fits(notesOn(step.ratings, offer, pieces)));
  return { limit, text: `With ${step.words}, ${offers.length === 1 ? "one" : offers.length} would fit.`, offers };
}

const whole = (ratings: Ratings, words: string): Step => ({ ratings, words, size: WITHOUT_FIGURE });

const apart = (has: number, asked: number) => Math.abs(Math.log(has / asked));

/** Volts ease by a step of the ladders at most (1000 to 630 is the widest): what bears less is another part, not an easing. */
const LEAST_OF_VOLTS = 0.6;

function easeVolts(ratings: Ratings, { volts }: Offer): Step | null {
  const { leastVolts, voltsKind } = ratings;
  if (!volts || !leastVolts || voltsKind === "ac" || volts < leastVolts * LEAST_OF_VOLTS) return null;
  const words = `${volts} V instead of ${leastVolts} V`;
  return { ratings: { ...ratings, leastVolts: volts }, words, size: apart(volts, leastVolts) };
}

function easeWatts(ratings: Ratings, { watts }: Offer): Step | null {
  const { leastWatts, mostWatts } = ratings;
  if (!watts) return null;
  const short = leastWatts !== null && watts < leastWatts;
  const asked = short ? leastWatts : mostWatts;
  if (!asked) return null;
  const eased = short ? { ...ratings, leastWatts: watts } : { ...ratings, mostWatts: watts };
  return { ratings: eased, words: `${watts} W instead of ${asked} W`, size: apart(watts, asked) };
}

function easeTolerance(ratings: Ratings, { tolerance }: Offer): Step | null {
  if (!tolerance || !ratings.tolerance) return null;
  const words = `${writeTolerance(tolerance)} instead of ${writeTolerance(ratings.tolerance)}`;
  return { ratings: { ...ratings, tolerance }, words, size: Math.max(tolerance.minus, tolerance.plus) };
}

function easeValue(ratings: Ratings, { value }: Offer): Step | null {
  const { wanted, kind, window } = ratings;
  if (!value || !wanted) return null;
  const eased: Ratings = {
    ...ratings,
    gate: "nominal",
    window: { min: Math.min(value, window?.min ?? value), max: Math.max(value, window?.max ?? value) },
  };
  const same = apart(value, wanted) < 1e-9;
  const words = same
    ? "its limits not held to the old part's"
    : `${writeValue(value, kind)} instead of ${writeValue(wanted, kind)}`;
  return { ratings: eased, words, size: apart(value, wanted) };
}
