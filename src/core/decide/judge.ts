import { drift, driftText } from "../measure/drift.js";
import { inPlaceTells, trueSpan } from "../measure/inPlaceTells.js";
import { type Verdict, type VerdictRule, verdict } from "../measure/verdict.js";
import type { Span } from "../part.js";
import { figures } from "../quantity/figures.js";
import { inSpan } from "../quantity/inSpan.js";
import { writeValue } from "../quantity/writeValue.js";
import type { Judged, Reading } from "./reading.js";
import { type LimitSources, readingLimits } from "./readingLimits.js";

/** Most meters end here: an open above it may be no more than the end of the scale. */
const METER_END_OHMS = 20e6;

/** Its ohms fall with the volts on it, so that an ohmmeter finds it open. */
const VOLTAGE_DEPENDENT = /\b(vdr|varistor)\b|voltage.dependent/i;

/** Up to these volts an ohmmeter tests; a leak of paper shows at its working volts. Common practice. */
const HAND_METER_VOLTS = 10;

/** Less than this is nothing on any meter. */
const LEAST_WRITTEN = 1e-12;

/** Where so little is no short. */
const NEARLY_NONE: Readonly<Partial<Record<Reading["quantity"], string>>> = {
  leakage: "no leakage",
  capacitance: "open, no capacitance",
};

const NOTHING: Verdict = "says nothing in place";

/** The quantities whose distance from the printed value is a drift. */
const VALUES: readonly string[] = ["resistance", "capacitance", "inductance"];

/** A reading as a person says it. @example readingText({ quantity: "resistance", value: 612_000, ... }) // "612 k" */
export function readingText({ quantity, value }: Reading): string {
  if (value === null) return `${quantity} that will not settle`;
  if (value === Number.POSITIVE_INFINITY) return quantity === "insulation" ? "insulation past the meter's end" : "open";
  if (value < LEAST_WRITTEN) return NEARLY_NONE[quantity] ?? "a short";
  if (quantity === "capacitance") return writeValue(value, "capacitor");
  if (quantity === "leakage") return `${figures(Number((value * 1e6).toPrecision(3)))} µA`;
  const text = writeValue(value, "resistor");
  return quantity === "resistance" ? text : `${quantity} ${text}`;
}

/**
 * What a reading says of an old part, by the setting `guard`; taken in place it convicts or acquits only as physics allows.
 *
 * @example judge({ quantity: "resistance", value: 612e3, inPlace: false, accuracy: 0.01 }, sources).verdict // "bad"
 */
export function judge(reading: Reading, from: LimitSources): Judged {
  const limits = readingLimits(reading, from);
  const nominal = from.part.value?.value ?? null;
  const compares = VALUES.includes(reading.quantity) && nominal !== null;
  const off = compares && reading.value !== null ? drift({ nominal, reading: reading.value }) : null;
  const judged = {
    reading,
    limits,
    between: betweenOf(reading),
    drift: off !== null && Number.isFinite(off) ? off : null,
  };
  if (reading.value === null)
    return { ...judged, verdict: NOTHING, because: "it will not settle: discharge, and read twice, ten seconds apart" };
  const open = reading.quantity === "resistance" && reading.value === Number.POSITIVE_INFINITY;
  if (open && VOLTAGE_DEPENDENT.test(from.part.printed))
    return {
      ...judged,
      verdict: NOTHING,
      because: "an ohmmeter's volts do not open it: judge it by its volts at a known current",
    };
  if (limits === null && open) return { ...judged, verdict: "bad", because: "open" };
  if (limits === null) return { ...judged, verdict: NOTHING, because: `no limit for its ${reading.quantity} is known` };
  if (
    reading.value === Number.POSITIVE_INFINITY &&
    nominal !== null &&
    nominal >= METER_END_OHMS &&
    from.part.kind === "resistor"
  )
    return { ...judged, verdict: NOTHING, because: "the meter's range may end below its value" };
  return { ...judged, ...against(reading, reading.value, limits, from) };
}

const uncertaintyIn = ({ accuracy }: Reading, value: number) =>
  Number.isFinite(value) ? Math.abs(value) * (accuracy ?? 0) : 0;

function betweenOf(reading: Reading): Span | null {
  const { value } = reading;
  return value === null ? null : trueSpan({ ...reading, reading: value, uncertainty: uncertaintyIn(reading, value) });
}

/** How far off a part is at the least that was read in place with a meter of known accuracy; "" where the other end tells nothing. */
function atTheLeast(reading: Reading, { part }: LimitSources): string {
  const [between, nominal] = [betweenOf(reading), part.value?.value ?? null];
  if (reading.quantity !== "resistance" || reading.accuracy === null || between === null || nominal === null) return "";
  if (between.min <= nominal || !Number.isFinite(between.min)) return "";
  return `it is ${writeValue(Number(between.min.toPrecision(3)), "resistor")} or more, ${driftText(between.min / nominal - 1)} at the least`;
}

function against(
  reading: Reading,
  value: number,
  window: Span,
  from: LimitSources,
): Pick<Judged, "verdict" | "because"> {
  const uncertainty = uncertaintyIn(reading, value);
  if (reading.inPlace) {
    const told = inPlaceTells({ quantity: reading.quantity, reading: value, uncertainty, window });
    return { ...told, because: [atTheLeast(reading, from), told.because].filter(Boolean).join("; ") };
  }
  const said = verdict({ reading: value, uncertainty, window }, from.settings.guard as VerdictRule);
  if (said === "bad" && inSpan(value, window))
    return { verdict: "likely bad", because: "the meter is too coarse for its limits" };
  if (said === "good" && reading.quantity === "insulation" && (reading.atVolts ?? Infinity) <= HAND_METER_VOLTS)
    return { verdict: NOTHING, because: "a meter's few volts prove nothing: test it at its rated volts" };
  return { verdict: said, because: limitText(reading, window) };
}

/** The limit that no tolerance of the part tells, in words; "" for its value. @example "at least 360 M" */
function limitText({ quantity, atVolts }: Reading, { min, max }: Span): string {
  if (VALUES.includes(quantity)) return "";
  const isLeast = max === Number.POSITIVE_INFINITY;
  const value = Number((isLeast ? min : max).toPrecision(3));
  const limit = readingText({ quantity, value, inPlace: false, accuracy: null }).replace(`${quantity} `, "");
  const at = atVolts == null ? "" : ` at ${figures(atVolts)} V`;
  return `${isLeast ? "at least" : "at most"} ${limit}${at} is sound`;
}
