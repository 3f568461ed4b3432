import type { Kind, Span } from "../part.js";
import type { StockPart } from "./stock.js";

/**
 * What a made-up value has to be. Base units; what is left out does not matter.
 *
 * The value has to lie in `window` with every part at either end of its tolerance. `watts` and `volts` are what the
 * whole must bear; each part's share of them may be up to `powerLoad` and `voltsLoad` (ratios, 1 when left out) of the
 * part's own rating. A part whose rating is not known does not bear a share that matters.
 */
export type Wants = {
  readonly kind: Kind;
  readonly wanted: number;
  readonly window: Span;
  readonly stock: readonly StockPart[];
  readonly watts?: number | null;
  readonly volts?: number | null;
  readonly powerLoad?: number;
  readonly voltsLoad?: number;
  /** Parts at least, 1 to 4; 1 when left out. */
  readonly leastParts?: number;
  /** Parts at most, 1 to 4; 4 when left out. */
  readonly mostParts?: number;
  /** Price of all parts together at most. */
  readonly mostPrice?: number | null;
  /** How many answers to list; 1 when left out. */
  readonly list?: number;
  /** Nearest first whatever the number of parts, or fewest parts first (when left out). */
  readonly first?: "nearest" | "fewest";
  /** Only networks that have this join outermost; both when left out. */
  readonly only?: "series" | "parallel" | null;
};

/** Watts that one part may bear in the network. */
export function bearableWatts(part: StockPart, wants: Wants): number {
  return wants.watts ? (part.watts ?? 0) * (wants.powerLoad ?? 1) : Number.POSITIVE_INFINITY;
}

/** Volts that one part may bear in the network. */
export function bearableVolts(part: StockPart, wants: Wants): number {
  return wants.volts ? (part.volts ?? 0) * (wants.voltsLoad ?? 1) : Number.POSITIVE_INFINITY;
}
