import type { Span } from "../part.js";
import { SERIES, type SeriesName } from "../quantity/series.js";
import { stepsBetween } from "../quantity/stepsBetween.js";
import { CONTROL_DECADE, ELECTROLYTIC_FARADS, WIREWOUND_OHMS } from "./ladders.js";
import type { Technology } from "./technology.js";

/** Series from coarse to fine: where no value of one lies in the window, the next is tried. */
const FINER = ["E6", "E12", "E24", "E96"] as const;
const WIRE = ["wirewound", "metal_clad"];
const WET = ["alu_axial", "alu_radial", "alu_can_new", "tantalum", "bipolar"];

const within = (values: readonly number[], span: Span) =>
  values.filter((value) => value >= span.min * (1 - 1e-9) && value <= span.max * (1 + 1e-9));

const series = (name: SeriesName, span: Span): readonly number[] =>
  span.min > 0 ? stepsBetween(span.min * (1 - 1e-9), span.max * (1 + 1e-9), SERIES[name]) : [];

/** The values of controls, 1, 2.5 and 5 in every decade, within a span. */
function controls(span: Span): readonly number[] {
  const decades = Array.from({ length: 7 }, (_, power) => CONTROL_DECADE.map((step) => step * 10 ** (power + 1)));
  return within(decades.flat(), span);
}

/** Whether a technology is made in a rule's series: where E96 is asked, carbon film ends at E24. */
export function reachesSeries(ruled: string | null, technology: Technology): boolean {
  return technology.kind !== "resistor" || ruled !== "E96" || technology.finest === "E96";
}

/**
 * The lists of values in which a technology is to be had within a span, the coarsest first.
 *
 * A rule's series says where to begin, the technology how fine it ends: film for paper begins with E6 and ends with E12.
 * `E24+WW` adds the old values in which wirewounds are still sold, `ELEC` is the stock list of electrolytics.
 *
 * @param ruled Series named by the rule (`E24`, `E24+WW`, `ELEC`, `1-2.5-5`), or null.
 * @param span Base units.
 * @example stockLists("E24+WW", technologyOf("wirewound")!, { min: 240, max: 260 }) // [[240, 250]]
 */
export function stockLists(ruled: string | null, technology: Technology, span: Span): readonly (readonly number[])[] {
  if (ruled === "1-2.5-5") return [controls(span)];
  if (WET.includes(technology.id)) return [within(ELECTROLYTIC_FARADS, span)];
  const wire = WIRE.includes(technology.id) && ruled === "E24+WW" ? within(WIREWOUND_OHMS, span) : [];
  const first = FINER.indexOf((ruled?.split("+")[0] ?? "E24") as (typeof FINER)[number]);
  const last = FINER.indexOf((technology.finest ?? "E24") as (typeof FINER)[number]);
  return FINER.slice(Math.min(Math.max(first, 0), last), last + 1).map((name) =>
    [...new Set([...series(name, span), ...wire])].sort((a, b) => a - b),
  );
}
