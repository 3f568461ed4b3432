import type { Kind } from "../part.js";
import { PartsError } from "../problem.js";
import { digitsEnd, scanNumber } from "./notation/number.js";
import { type Unit, unitNamed } from "./notation/units.js";

/** What a value text says: the number in base units, the unit if the text or the kind tells it, and the kind that the unit implies. */
export type ReadValue = {
  readonly value: number;
  readonly unit: "ohm" | "farad" | "henry" | null;
  readonly kind: Kind | null;
};

/** What is known beside the text: the kind of part, and what a bare capital M means in the document. */
export type ValueHints = { readonly kind?: Kind; readonly capitalM?: "thousand" | "million" };

const HOW = "Write it like 4.7k, 4k7 or 4700; .05 mfd, 47n or 250 mmf; 2.5 mH.";

const UNIT_OF_KIND: Partial<Record<Kind, "ohm" | "farad" | "henry">> = {
  resistor: "ohm",
  potentiometer: "ohm",
  thermistor: "ohm",
  capacitor: "farad",
  inductor: "henry",
};
const KIND_OF_UNIT = { ohm: "resistor", farad: "capacitor", henry: "inductor" } as const;

/**
 * The value that a text says, in old or new notation, in base units: ohms, farads, henries.
 *
 * Reads 470K, 470,000, 4.7 meg, 1 1/2 meg, 4K7, 2R2, R47, .05 mfd, 250 mmf, 4n7, 4,7nF, 2.5 mH and bare numbers. A bare
 * capital M is a million unless `hints.capitalM` says thousand; on a capacitor (`hints.kind`) it is microfarad.
 *
 * @throws PartsError "unreadable" when the text is not one value
 * @example readValue("4K7").value // 4700
 */
export function readValue(text: string, hints: ValueHints = {}): ReadValue {
  const trimmed = text.trim();
  const scanned = scanValue(trimmed);
  if (!scanned) throw new PartsError("unreadable", text, HOW);
  const { number, unit } = scanned;
  const capital = unit?.capitalM ? capitalFactor(hints) : null;
  const measure = unit?.measure ?? (hints.kind ? (UNIT_OF_KIND[hints.kind] ?? null) : null) ?? impliedBy(unit);
  if (measure !== null && measure !== "ohm" && measure !== "farad" && measure !== "henry")
    throw new PartsError("unreadable", text, HOW);
  const value = times(number, capital ?? unit?.factor ?? 1);
  return { value, unit: measure, kind: hints.kind ?? (measure ? KIND_OF_UNIT[measure] : null) };
}

/** A product without the dust of binary fractions: 4.7 times 1e-6 is 4.7e-6. */
export function times(number: number, factor: number): number {
  if (factor === 1) return number;
  const exact = factor < 1 ? number / Math.round(1 / factor) : number * factor;
  return Number(exact.toPrecision(15));
}

function capitalFactor(hints: ValueHints): number {
  if (hints.kind === "capacitor") return 1e-6;
  return hints.capitalM === "thousand" ? 1e3 : 1e6;
}

/** A bare k or M is said of resistors, a bare u, n or p of capacitors. */
function impliedBy(unit: Unit | null): "ohm" | "farad" | null {
  if (!unit) return null;
  return unit.factor > 1 ? "ohm" : "farad";
}

/** The one number and unit that a whole text consists of, or null. */
function scanValue(text: string): { number: number; unit: Unit | null } | null {
  const lettered = scanLetterAsPoint(text);
  if (lettered) return lettered;
  const number = scanMixed(text);
  if (!number) return null;
  const word = text.slice(number.end).trim();
  if (word === "") return { number: number.value, unit: null };
  const unit = unitNamed(word) ?? unitOfTwoWords(word);
  return unit ? { number: number.value, unit } : null;
}

/** "K ohms", "meg ohm", "M Ω": a prefix and its unit, written apart. */
function unitOfTwoWords(text: string): Unit | null {
  const [first = "", second = "", ...more] = text.split(/[\s-]+/);
  const [prefix, unit] = [unitNamed(first), unitNamed(second)];
  if (more.length > 0 || !prefix || !unit || prefix.measure !== null || unit.factor !== 1) return null;
  return { ...prefix, measure: unit.measure };
}

/** A whole number and a fraction: 1 1/2, 1-1/2, 2 ½; or any one number. */
function scanMixed(text: string): { value: number; end: number } | null {
  const first = scanNumber(text, 0);
  if (!first || first.fraction || !Number.isInteger(first.value)) return first;
  if (text[first.end] !== " " && text[first.end] !== "-") return first;
  const second = scanNumber(text, first.end + 1);
  return second?.fraction ? { value: first.value + second.value, end: second.end } : first;
}

const POINT_LETTER = /^(\d*)\s?(R|E|Ω|ohms?|k|K|M|m|meg|u|µ|μ|n|p|F|H)(?:Ω|F|H)?(\d+)(Ω|F|f|H|h)?$/;

/** Letters that may stand first, for a nought before the point: p33, n47 (IEC 60062). R47 is told by its measure. */
const LEADS = ["p", "n", "µ", "μ"];

/** The letter stands for the point: 4K7, 2R2, R47, 4n7, 3µF3, 2k2Ω. */
function scanLetterAsPoint(text: string): { number: number; unit: Unit | null } | null {
  const match = POINT_LETTER.exec(text);
  if (!match || text.length > 24 || digitsEnd(text, 0) === text.length) return null;
  const [, whole = "", letter = "", decimals = "", after = ""] = match;
  const prefix = unitNamed(letter);
  const unit = after ? unitNamed(after) : undefined;
  if (!prefix || (whole === "" && prefix.measure !== "ohm" && !LEADS.includes(letter))) return null;
  return { number: Number(`${whole || 0}.${decimals}`), unit: unit ? { ...prefix, measure: unit.measure } : prefix };
}
