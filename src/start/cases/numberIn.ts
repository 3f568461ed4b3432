import { type SaidMeasure, statementsIn } from "../../core/index.js";

/** The number that a text begins with, in base units; null where it begins with none. @example numberIn("62 MΩ") // { number: 62e6, measure: "ohm" } */
export function numberIn(text: string): { readonly number: number; readonly measure: SaidMeasure | null } | null {
  const plain = /^\s*-?\d*\.?\d+(?:e-?\d+)?\s*$/i.test(text) ? Number(text) : null;
  if (plain !== null) return { number: plain, measure: null };
  const [first] = /^\s*[<>≈~±]?\s*[.\d]/.test(text) ? statementsIn(text) : [];
  return first?.measure ? { number: first.numbers[0]!, measure: first.measure } : null;
}
