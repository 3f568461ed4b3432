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

/** A number of each part, by its place. @example numbersOf(stock, (part) => part.value) */
export function numbersOf(parts: readonly StockPart[], of: (part: StockPart) => number): Float64Array {
  const numbers = new Float64Array(parts.length);
  for (let place = 0; place < parts.length; place++) numbers[place] = of(parts[place]!);
  return numbers;
}

/** The place of the first part that is like each in all but pieces; parts of one value have to stand together. */
export function alikeOf(parts: readonly StockPart[]): Int32Array {
  const alike = Int32Array.from(parts.keys());
  for (let place = 1; place < parts.length; place++) {
    for (let other = place - 1; other >= 0 && parts[other]!.value === parts[place]!.value; other--)
      if (areAlike(parts[other]!, parts[place]!)) alike[place] = alike[other]!;
  }
  return alike;
}

function areAlike(a: StockPart, b: StockPart): boolean {
  const sameTolerance = a.tolerance?.minus === b.tolerance?.minus && a.tolerance?.plus === b.tolerance?.plus;
  return a.watts === b.watts && a.volts === b.volts && a.price === b.price && sameTolerance;
}
