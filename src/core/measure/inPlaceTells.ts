import type { Span } from "../part.js";
import { PartsError } from "../problem.js";
import type { Verdict } from "./verdict.js";

/** What can be read on a part that is still in place. */
export const IN_PLACE_QUANTITIES = ["resistance", "insulation", "capacitance", "ESR", "leakage", "inductance"] as const;
export type InPlaceQuantity = (typeof IN_PLACE_QUANTITIES)[number];

type Proof = {
  readonly limit: "above max" | "below min" | "well above min" | "well below max";
  readonly verdict: Verdict;
};

/** Neighbours can only lower resistance, insulation and ESR, and only raise capacitance and leakage (common practice). */
const PROOFS: Readonly<Record<InPlaceQuantity, Proof | null>> = {
  resistance: { limit: "above max", verdict: "bad" },
  ESR: { limit: "above max", verdict: "bad" },
  capacitance: { limit: "below min", verdict: "bad" },
  insulation: { limit: "well above min", verdict: "good" },
  leakage: { limit: "well below max", verdict: "good" },
  inductance: null,
};

/**
 * Between what the true value lies, by the meter and by where it was read: neighbours leave one side open.
 *
 * @returns In the reading's unit; an end that nothing tells is zero or infinite.
 * @example trueSpan({ quantity: "resistance", reading: 301e3, uncertainty: 4515, inPlace: true }) // { min: 296_485, max: Infinity }
 */
export function trueSpan(read: {
  readonly quantity: InPlaceQuantity;
  readonly reading: number;
  readonly uncertainty: number;
  readonly inPlace: boolean;
}): Span {
  const { reading, uncertainty, inPlace } = read;
  const [min, max] = [Math.max(reading - uncertainty, 0), reading + uncertainty];
  if (!inPlace) return { min, max };
  const proof = PROOFS[read.quantity];
  const atLeast = proof?.limit === "above max" || proof?.limit === "well above min";
  return { min: atLeast ? min : 0, max: proof === null || atLeast ? Number.POSITIVE_INFINITY : max };
}

const REASONS: Readonly<Record<InPlaceQuantity, string>> = {
  resistance: "parallel paths only lower it: a high reading convicts, a low or true one proves nothing",
  ESR: "parallel paths only lower it: a high reading convicts, a low one proves nothing",
  capacitance: "parallel capacitors only raise it: a low reading convicts, a high or true one proves nothing",
  insulation: "parallel paths only lower it: a high reading acquits, a low one proves nothing",
  leakage: "parallel paths only raise it: a low reading acquits, a high one proves nothing",
  inductance: "a capacitor across it bends it either way",
};

/**
 * What a reading taken in place can prove: bad, good, or nothing until a lead is lifted.
 *
 * A charged capacitor nearby falsifies either way: discharge, prove 0 V, and swap the leads once before you believe it.
 *
 * @param read The quantity, the reading, its uncertainty and the window it should lie in (ends may be infinite).
 * @throws PartsError "unknown-name" for another quantity.
 * @example inPlaceTells({ quantity: "resistance", reading: 6e5, uncertainty: 5e3, window: { min: 3.8e5, max: 5.6e5 } }).verdict // "bad"
 */
export function inPlaceTells(read: {
  readonly quantity: InPlaceQuantity;
  readonly reading: number;
  readonly uncertainty: number;
  readonly window: Span;
}): { readonly verdict: Verdict; readonly because: string } {
  if (!IN_PLACE_QUANTITIES.includes(read.quantity)) {
    throw new PartsError("unknown-name", read.quantity, `Read one of: ${IN_PLACE_QUANTITIES.join(", ")}.`);
  }
  const proof = PROOFS[read.quantity];
  const proved = proof !== null && reaches(proof.limit, read);
  return { verdict: proved ? proof.verdict : "says nothing in place", because: REASONS[read.quantity] };
}

function reaches(limit: Proof["limit"], read: { reading: number; uncertainty: number; window: Span }): boolean {
  const [lowest, highest] = [read.reading - read.uncertainty, read.reading + read.uncertainty];
  if (limit === "above max") return lowest > read.window.max;
  if (limit === "below min") return highest < read.window.min;
  return limit === "well above min" ? lowest >= read.window.min : highest <= read.window.max;
}
