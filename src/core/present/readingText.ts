import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { readValue } from "../quantity/readValue.js";

/** What a meter can say of a part: a value, that it is open or short, or that it jumps. */
export type ReadingState = "value" | "open" | "short" | "unsteady";

/** What was measured: on a capacitor it may be its leakage, insulation or ESR instead of its capacitance. */
export type Measured = "resistance" | "capacitance" | "inductance" | "insulation" | "leakage" | "ESR";

/** A reading as the log keeps it: `value` in base units (amperes for leakage), null unless the state is "value". */
export type TypedReading = {
  readonly state: ReadingState;
  readonly measured: Measured;
  readonly value: number | null;
  readonly text: string;
};

const STATES: Readonly<Record<string, ReadingState>> = {
  open: "open",
  ol: "open",
  "o.l.": "open",
  short: "short",
  shorted: "short",
  jumps: "unsteady",
  unsteady: "unsteady",
};

const HOW = "Write a figure such as 612, 612 k or 0.05 µF, or open, short or jumps.";
const MICRO = 1e-6;

/**
 * A reading from the way it is typed at the bench: a bare figure takes the printed value's unit.
 *
 * On a capacitor MΩ is its insulation, µA its leakage and plain Ω its ESR.
 *
 * @param text As typed.
 * @param printed The part's value as its row writes it ("470 k"), or null where it has none.
 * @throws PartsError "unreadable" for anything else.
 * @example readReading("612", "470 k", "resistor") // { state: "value", measured: "resistance", value: 612_000, text: "612 k" }
 */
export function readReading(text: string, printed: string | null, kind: Kind): TypedReading {
  const typed = text.trim();
  const state = STATES[typed.toLowerCase()];
  const plain = MEASURED[kind] ?? "resistance";
  if (state) return { state, measured: plain, value: null, text: state === "unsteady" ? "jumps" : state };
  const leakage = /^([\d.,]+)\s*[uµμ]A$/i.exec(typed);
  if (leakage) return reading("leakage", figure(leakage[1]!) * MICRO, `${leakage[1]} µA`);
  const whole = /^[\d.,]+$/.test(typed) ? `${typed} ${unitOf(printed)}`.trim() : typed;
  if (kind === "capacitor" && /(?:Ω|ohms?)$/i.test(whole)) return onCapacitor(whole);
  return reading(plain, readValue(whole, { kind }).value, whole);
}

const MEASURED: Readonly<Partial<Record<Kind, Measured>>> = { capacitor: "capacitance", inductor: "inductance" };

const reading = (measured: Measured, value: number, text: string): TypedReading => {
  if (!Number.isFinite(value)) throw new PartsError("unreadable", text, HOW);
  return { state: "value", measured, value, text };
};

const figure = (text: string) => Number(text.replace(",", "."));

/** Ohms on a capacitor: from a thousand up they are its insulation, below that its ESR. */
function onCapacitor(whole: string): TypedReading {
  const { value } = readValue(whole, { kind: "resistor" });
  return reading(value >= 1000 ? "insulation" : "ESR", value, whole);
}

/** The unit a printed value ends in. @example unitOf("0.047 µF") // "µF" */
function unitOf(printed: string | null): string {
  return /[a-zA-ZµΩ]+$/.exec(printed?.trim() ?? "")?.[0] ?? "";
}
