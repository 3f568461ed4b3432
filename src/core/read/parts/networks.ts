import type { InnerPart, Kind } from "../../part.js";
import { type Unit, unitNamed } from "../../quantity/notation/units.js";
import { times } from "../../quantity/readValue.js";
import type { Amount, Figure, Words } from "../words/words.js";
import type { Context } from "./context.js";

/** A figure as a piece of a network: a resistor by ohms, K or MEG, a capacitor by farads; bare ones go with the next. */
function piece(figure: Figure, context: Context): InnerPart | null {
  const { unit, number } = figure;
  if (!unit) return null;
  if (unit.capitalM)
    return { kind: "resistor", value: times(number, context.dialect.capitalM === "thousand" ? 1e3 : 1e6) };
  if (unit.measure === "ohm" || (unit.measure === null && unit.factor >= 1e3))
    return { kind: "resistor", value: times(number, unit.factor) };
  if (unit.measure === "farad" || (unit.measure === null && unit.factor < 1))
    return { kind: "capacitor", value: times(number, unit.factor) };
  return null;
}

/** A place between two pins as a list writes it: "pins 1-2", "terminals A and C", "(3-5)". */
const PINS =
  /\(?\b(?:pins?|terminals?|lugs?)\.?\s*(\w{1,2})\s*(?:-|–|to|and|&|\/)\s*(\w{1,2})\b\)?|\(\s*(\d{1,2}|[A-K])\s*(?:-|–|to)\s*(\d{1,2}|[A-K])\s*\)/gi;

type Pins = { readonly start: number; readonly end: number; readonly pins: string };

const pinsIn = (text: string): readonly Pins[] =>
  [...text.matchAll(PINS)].map((found) => ({
    start: found.index,
    end: found.index + found[0].length,
    pins: `${found[1] ?? found[3]}-${found[2] ?? found[4]}`,
  }));

/** Where a figure starts in its text. */
const startOf = ({ from }: Figure, { tokens }: Words) => tokens[from]?.start ?? 0;

/** The pins printed behind a figure and before the next one; before it where the list puts them first. */
function pinsOf(start: number, next: number, before: number, all: readonly Pins[], comeFirst: boolean): string | null {
  const between = (from: number, to: number) => all.find((each) => each.start >= from && each.start < to)?.pins ?? null;
  return comeFirst ? between(before, start) : between(start, next);
}

/** The unit of a bare figure: a decimal is microfarads, any other goes with the next figure that has a unit. */
function unitOfBare(figure: Figure, later: readonly Figure[], context: Context): Unit | null {
  const next = later.find(({ unit }) => unit && (unit.measure === "farad" || unit.measure === "ohm"))?.unit ?? null;
  if (next?.measure !== "farad") return next;
  if (figure.number < 1) return unitNamed("mfd") ?? next;
  return context.units.wholes ?? next;
}

/**
 * The resistors and capacitors printed for a network (22K, 8200 & 8200 ohms; .002, .005 & .005 MFD), in order, each with
 * its pins where the list prints them.
 */
export function innerOfNetwork(words: Words, context: Context): InnerPart[] {
  const pins = pinsIn(words.text);
  const isPin = (figure: Figure) =>
    pins.some(({ start, end }) => startOf(figure, words) >= start && startOf(figure, words) < end);
  const figures = words.amounts
    .filter((amount) => amount.aside === null)
    .flatMap((amount) => amount.figures)
    .filter((figure) => !isPin(figure));
  const starts = figures.map((figure) => startOf(figure, words));
  const comeFirst = pins[0] !== undefined && pins[0].start < (starts[0] ?? 0);
  return figures.flatMap((figure, i) => {
    const unit = figure.unit ?? unitOfBare(figure, figures.slice(i + 1), context);
    const found = piece({ ...figure, unit }, context);
    if (!found) return [];
    const own = pinsOf(starts[i]!, starts[i + 1] ?? Number.POSITIVE_INFINITY, starts[i - 1] ?? 0, pins, comeFirst);
    return [own === null ? found : { ...found, pins: own }];
  });
}

/** "peaking, 93 uh, on 39K resistor"; "peaking coil on 22K". */
const isCarrier = (amount: Amount, { tokens }: Words) => tokens[amount.from - 1]?.key === "on";

/** What a coil is wound on, when that is a resistor with a value ("wound on 22K resistor"). */
export function innerOfCoil(words: Words, context: Context): InnerPart[] | null {
  const amount = words.amounts.find(
    (candidate) => candidate.aside === "wound" || candidate.aside === "shunted" || isCarrier(candidate, words),
  );
  const found = amount && piece(amount.figures[0]!, context);
  return found ? [found] : null;
}

/** The elements of a tapped resistor printed as a list (25 - 150 - 2,500 ohms). */
export const innerOfTapped = (values: readonly number[], kind: Kind): InnerPart[] =>
  values.map((value) => ({ kind, value }));
