import type { InnerPart, Kind } from "../../part.js";
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

/** The resistors and capacitors printed for a network (22K, 8200 & 8200 ohms; .002, .005 & .005 MFD), in order. */
export function innerOfNetwork(words: Words, context: Context): InnerPart[] {
  const figures = words.amounts.filter((amount) => amount.aside === null).flatMap((amount) => amount.figures);
  return figures.flatMap((figure, i) => {
    const known = piece(figure, context);
    if (known) return [known];
    if (figure.unit) return [];
    const next = figures
      .slice(i + 1)
      .find((later) => later.unit && (later.unit.measure === "farad" || later.unit.measure === "ohm"));
    const wholes = context.units.wholes;
    const isPico = next?.unit?.measure === "farad" && figure.number >= 1 && wholes !== null;
    const unit = isPico ? wholes : next?.unit;
    return unit ? [piece({ ...figure, unit }, context)].flatMap((found) => found ?? []) : [];
  });
}

/** "peaking, 93 uh, on 39K resistor". */
const isCarrier = (amount: Amount, { tokens }: Words) =>
  tokens[amount.from - 1]?.key === "on" && /^resist/.test(tokens[amount.to]?.key ?? "");

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
