import { type SaidMeasure, statementsIn } from "../../core/index.js";

/** The one number that a text is, in base units; null where it is none or several. @example numberIn("62 MΩ") // { number: 62e6, measure: "ohm" } */
export function numberIn(text: string): { readonly number: number; readonly measure: SaidMeasure | null } | null {
  const plain = /^\s*-?\d*\.?\d+(?:e-?\d+)?\s*$/i.test(text) ? Number(text) : null;
  if (plain !== null) return { number: plain, measure: null };
  const [first, second] = /^\s*[<>≈~±]?\s*[.\d]/.test(text) ? statementsIn(text) : [];
  return first?.measure && !second ? { number: first.numbers[0]!, measure: first.measure } : null;
}
