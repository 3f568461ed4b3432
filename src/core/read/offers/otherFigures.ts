import type { Kind, Warning } from "../../part.js";
import { times } from "../../quantity/readValue.js";
import { currentOf } from "./capacitorFigures.js";
import { inBase, type OfferFigure } from "./figures.js";
import type { PrintedVolts, Stated, StatedHints } from "./stated.js";

/** Kinds of which a catalogue's volts are a rating of the part: not windings, heaters or whatever "other" may be. */
const WITH_VOLTS: ReadonlySet<Kind> = new Set([
  "resistor",
  "potentiometer",
  "rectifier",
  "fuse",
  "lamp",
  "switch",
  "capacitor",
  "thermistor",
]);

/** Ohms, watts and volts from the figures of a resistor or control; a bare number is ohms. */
export function resistorFigures(figures: readonly OfferFigure[], hints: StatedHints): Partial<Stated> {
  const warnings: Warning[] = [];
  const ohms = figures.filter((figure, i) => isOhms(figure, figures, i));
  const watts = figures.filter((figure) => figure.measure === "watt" && !ohms.includes(figure));
  const stated = ohms.filter((figure) => figure.own || figure.measure === "ohm");
  const [first, second] = (stated.length > 0 ? stated : ohms).map((figure) => ohmsOf(figure, hints, warnings));
  const base = { watts: watts[0] ? inBase(watts[0]) : null, volts: voltsIn(figures, "resistor"), warnings };
  const isRange = second !== undefined && first! < second && /^([-–—]|to|bis|tot|a|\.+)$/.test(stated[1]?.before ?? "");
  if (isRange) return { ...base, valueMin: first, valueMax: second };
  return { ...base, value: first ?? null };
}

/** Ohms by unit or prefix, else a bare number: the first of 2500/25W, whose unit is the second's. */
function isOhms(figure: OfferFigure, figures: readonly OfferFigure[], i: number): boolean {
  if (figure.measure === "ohm" || (figure.measure === null && figure.factor > 1)) return true;
  const next = figures[i + 1];
  if (figure.own) return false;
  const isFirstOfTwo = next?.group === figure.group && next.own && next.before === "/" && figure.number > next.number;
  return isFirstOfTwo || (figure.measure === null && figure.factor === 1);
}

function ohmsOf(figure: OfferFigure, { capitalM }: StatedHints, warnings: Warning[]): number {
  if (figure.measure !== null && figure.measure !== "ohm") return figure.number;
  if (!figure.capitalM) return inBase(figure);
  if (capitalM === null) {
    warnings.push({ code: "ambiguous-m", text: `${figure.number}M may be thousands or millions of ohms` });
    return Number.NaN;
  }
  return times(figure.number, capitalM === "thousand" ? 1e3 : 1e6);
}

/** Henries of a coil; what else it prints (ohms, amperes) is no value. */
export function inductorFigures(figures: readonly OfferFigure[]): Partial<Stated> {
  const henries = figures.filter((figure) => figure.measure === "henry");
  if (henries.length === 2 && /^([-–—]|to)$/.test(henries[1]!.before)) {
    return { valueMin: inBase(henries[0]!), valueMax: inBase(henries[1]!) };
  }
  return { value: henries[0] ? inBase(henries[0]) : null };
}

/** Volts printed for a part that is no capacitor; none for kinds whose volts are not a rating. */
export function voltsIn(figures: readonly OfferFigure[], kind: Kind): PrintedVolts[] {
  if (!WITH_VOLTS.has(kind)) return [];
  const volts = figures.filter((figure) => figure.measure === "volt");
  const groups = new Map<number, OfferFigure[]>();
  for (const figure of volts) groups.set(figure.group, [...(groups.get(figure.group) ?? []), figure]);
  return [...groups.values()]
    .filter((group) => !(kind === "lamp" && group.length > 1))
    .map((group) => ({ volts: group.map(inBase), current: currentOf(group.at(-1)!) }));
}
