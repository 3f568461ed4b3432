import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { readValue } from "../quantity/readValue.js";

/** What a meter can say of a part: a value, that it is open or short, or that it jumps. */
export type ReadingState = "value" | "open" | "short" | "unsteady";

/** What was measured: on a capacitor it may be its leakage, insulation or ESR instead of its capacitance. */
export type Measured = "resistance" | "capacitance" | "inductance" | "insulation" | "leakage" | "ESR";

/**
 * A reading as the log keeps it: `value` in base units (amperes for leakage), null unless the state is "value"; `atVolts`
 * the volts of an insulation or leakage test where they are told.
 */
export type TypedReading = {
  readonly state: ReadingState;
  readonly measured: Measured;
  readonly value: number | null;
  readonly text: string;
  /** True for a figure that was typed without a unit and took the printed one. */
  readonly isBare: boolean;
  readonly atVolts: number | null;
};

type State = { readonly state: ReadingState; readonly text: string };

const OPEN: State = { state: "open", text: "open" };
const SHORT: State = { state: "short", text: "short" };
const JUMPS: State = { state: "unsteady", text: "jumps" };
/** The end of an ohmmeter's scale: of a resistor it says open, of a capacitor that it insulates. */
const OVER: State = { state: "open", text: "OL" };

/** The words of the bench for what is no figure, as people write them (common practice). */
const STATES: Readonly<Record<string, State>> = {
  open: OPEN,
  "open circuit": OPEN,
  "o/c": OPEN,
  ol: OVER,
  "0l": OVER,
  "o.l.": OVER,
  "∞": OVER,
  short: SHORT,
  shorted: SHORT,
  "s/c": SHORT,
  "short circuit": SHORT,
  "dead short": SHORT,
  jumps: JUMPS,
  unsteady: JUMPS,
  erratic: JUMPS,
  intermittent: JUMPS,
};

const HOW = "Write a figure such as 612, 612 k or 0.05 µF, or open, short or jumps.";
const AMPS = { n: 1e-9, u: 1e-6, µ: 1e-6, μ: 1e-6, m: 1e-3 } as const;

/** What stands between two readings of one part in its cell. */
const BETWEEN = "; ";

/**
 * A reading from the way it is typed at the bench: a bare figure takes the printed value's unit.
 *
 * On a capacitor MΩ is its insulation, µA its leakage and plain Ω its ESR; OL is an insulation past the meter's end, open a
 * capacitor that has no capacitance. Behind a leakage or an insulation may stand the volts it was read at ("4 µA at 200 V").
 *
 * @param text As typed.
 * @param printed The part's value as its row writes it ("470 k"), or null where it has none.
 * @throws PartsError "unreadable" for anything else.
 * @example readReading("612", "470 k", "resistor") // { state: "value", measured: "resistance", value: 612_000, text: "612 k" }
 */
export function readReading(text: string, printed: string | null, kind: Kind): TypedReading {
  const [, figure = "", volts] = AT_VOLTS.exec(text.trim())!;
  if (volts === undefined) return { ...plainReading(figure, printed, kind), atVolts: null };
  const read = plainReading(figure, printed, kind);
  return { ...read, text: `${read.text} at ${volts} V`, atVolts: Number(volts) };
}

/** A reading and the volts it was taken at, where they stand behind it. */
const AT_VOLTS = /^(.*?)(?:\s+(?:at|@)\s*(\d+(?:\.\d+)?)\s*(?:V|volts?)\.?)?$/is;

/** A reading by itself. */
function plainReading(typed: string, printed: string | null, kind: Kind): Figure {
  const said = STATES[typed.toLowerCase()];
  const plain = MEASURED[kind] ?? "resistance";
  if (said)
    return {
      state: said.state,
      measured: measuredBy(said, plain),
      value: null,
      text: textOf(said, plain),
      isBare: false,
    };
  const leakage = /^([\d.,]+)\s*([nuµμm])A$/i.exec(typed);
  if (leakage) return leakageOf(leakage[1]!, leakage[2]!);
  const isBare = /^[\d.,]+$/.test(typed);
  const whole = isBare ? `${typed} ${unitOf(printed)}`.trim() : typed;
  if (kind === "capacitor" && /(?:Ω|ohms?)$/i.test(whole)) return onCapacitor(whole);
  return { ...reading(plain, valueIn(whole, kind), whole), isBare };
}

/** A value as lists write it, or the bench's own words for what would have worked. */
function valueIn(text: string, kind: Kind): number {
  try {
    return readValue(text, { kind }).value;
  } catch (error) {
    throw error instanceof PartsError ? new PartsError("unreadable", text, HOW) : error;
  }
}

/** Prefixes that a bare figure may have been meant in, as ratios of the one it got. */
const OTHER_PREFIXES = [1e-9, 1e-6, 1e-3, 1e3, 1e6, 1e9];
/** So many times off, a reading is more likely a slip of the unit than a drift. */
const SLIP = 30;

/**
 * What a bare figure would read in another unit, where the printed one puts it far off and the other near; else null.
 *
 * @param nominal The printed value in base units.
 * @example slipOf(readReading("980", "1 M", "resistor"), 1e6) // 980_000
 */
export function slipOf({ isBare, value }: TypedReading, nominal: number): number | null {
  const far = (each: number) => Math.max(each / nominal, nominal / each);
  if (!isBare || value === null || !(value > 0) || !(nominal > 0) || far(value) < SLIP) return null;
  const nearest = OTHER_PREFIXES.map((factor) => value * factor).sort((a, b) => far(a) - far(b))[0]!;
  return far(nearest) < SLIP ? nearest : null;
}

/**
 * All readings that a cell of Parts holds of one part, such as the capacitance and the leakage of a capacitor.
 *
 * @throws PartsError "unreadable" where one of them is none.
 * @example readReadings("0.052 µF; 3 µA", "0.05 µF", "capacitor").map(({ measured }) => measured) // ["capacitance", "leakage"]
 */
export function readReadings(cell: string, printed: string | null, kind: Kind): readonly TypedReading[] {
  return cell.split(BETWEEN.trim()).map((text) => readReading(text, printed, kind));
}

/**
 * The cell of a part that was read again: a new reading takes the place of the old one of the same quantity, others stay.
 *
 * @param known Readings taken the same way, in place or lifted.
 */
export function joinReadings(known: readonly TypedReading[], fresh: readonly TypedReading[]): string {
  const kept = known.filter(({ measured }) => !fresh.some((each) => each.measured === measured));
  return [...kept, ...fresh].map(({ text }) => text).join(BETWEEN);
}

/** What a reading comes to: open has no end of ohms, but no capacitance at all; null where it would not settle. */
export function measuredValue({
  state,
  measured,
  value,
}: Pick<TypedReading, "state" | "measured" | "value">): number | null {
  const open = measured === "capacitance" ? 0 : Number.POSITIVE_INFINITY;
  return { value, open, short: 0, unsteady: null }[state];
}

const MEASURED: Readonly<Partial<Record<Kind, Measured>>> = { capacitor: "capacitance", inductor: "inductance" };

/** A short, or the end of an ohmmeter's scale, tells of a capacitor's insulation; of a coil both tell its ohms. */
function measuredBy(said: State, plain: Measured): Measured {
  if (plain === "inductance" && said !== JUMPS) return "resistance";
  return plain === "capacitance" && (said === SHORT || said === OVER) ? "insulation" : plain;
}

const textOf = (said: State, plain: Measured) => (said === OVER && plain !== "capacitance" ? OPEN.text : said.text);

type Figure = Omit<TypedReading, "atVolts">;

const reading = (measured: Measured, value: number, text: string): Figure => {
  if (!Number.isFinite(value)) throw new PartsError("unreadable", text, HOW);
  return { state: "value", measured, value, text, isBare: false };
};

function leakageOf(digits: string, prefix: string): Figure {
  const unit = prefix.toLowerCase() as keyof typeof AMPS;
  const written = unit === "u" || unit === "μ" ? "µ" : unit;
  return reading("leakage", Number(digits.replace(",", ".")) * AMPS[unit], `${digits} ${written}A`);
}

/** Ohms on a capacitor: from a thousand up they are its insulation, below that its ESR. */
function onCapacitor(whole: string): Figure {
  const value = valueIn(whole, "resistor");
  return reading(value >= 1000 ? "insulation" : "ESR", value, whole);
}

/** The unit a printed value ends in. @example unitOf("0.047 µF") // "µF" */
function unitOf(printed: string | null): string {
  return /[a-zA-ZµΩ]+$/.exec(printed?.trim() ?? "")?.[0] ?? "";
}
