import type { Tolerance } from "../part.js";

/**
 * A part that a value may be made up from: base units; null where it is not known or does not matter. `price` is for
 * one piece, `pieces` is how many there are (null: as many as you like).
 */
export type StockPart = {
  readonly value: number;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly tolerance: Tolerance | null;
  readonly price: number | null;
  readonly pieces: number | null;
};

/** Parts of these values that are alike in everything else. @example stockOf([1000, 1200], { watts: 0.5 }) */
export function stockOf(values: readonly number[], alike: Partial<Omit<StockPart, "value">> = {}): StockPart[] {
  const blank = { watts: null, volts: null, tolerance: null, price: null, pieces: null };
  return values.map((value) => ({ ...blank, ...alike, value }));
}
