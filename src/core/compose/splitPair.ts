import { PartsError } from "../problem.js";
import { type MadeUp, makeUp } from "./makeUp.js";
import type { Wants } from "./wants.js";

/** What to split: a value into two parts of the stock that are in series, or in parallel. */
export type Split = Pick<Wants, "kind" | "wanted" | "stock" | "list"> & { readonly only: "series" | "parallel" };

/** Further off than this the best pair is no help to anyone. */
const HOPELESS = 2;

/**
 * The best pairs for a value, nearest first, with each part's share of power and voltage.
 *
 * @throws PartsError none-within when even the best pair is off by half or double
 * @example splitPair({ kind: "resistor", wanted: 3000, stock: stockOf([1500]), only: "series", list: 1 })
 */
export function splitPair(split: Split): readonly MadeUp[] {
  const { wanted } = split;
  const window = { min: wanted / HOPELESS, max: wanted * HOPELESS };
  const { found } = makeUp({ ...split, window, leastParts: 2, mostParts: 2 });
  if (found.length > 0) return found;
  throw new PartsError("none-within", "half and double the value wanted", "Give a stock with more suitable values.");
}
