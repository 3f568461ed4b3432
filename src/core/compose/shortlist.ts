import type { Network } from "./network.js";
import type { StockPart } from "./stock.js";

/** A network that meets the wants; `distance` is how far off it is, as the logarithm of the ratio. */
export type Candidate = {
  readonly network: () => Network<StockPart>;
  readonly distance: number;
  readonly parts: number;
  readonly price: number;
  /** The largest share of the power that one part takes. */
  readonly hardest: number;
  /** The same for the same network, however it was come by. */
  readonly key: () => string;
};

/** The best candidates so far: nearest first, at equal distance fewer parts, then the lower price, then the load
 * spread more evenly; or fewest parts first. */
export type Shortlist = {
  readonly best: readonly Candidate[];
  /** How far off a candidate may be and still matter. */
  readonly reach: () => number;
  readonly add: (candidate: Candidate) => void;
};

/** An empty list that keeps the best `length` candidates. */
export function shortlist(length: number, first: "nearest" | "fewest"): Shortlist {
  const best: Candidate[] = [];
  const ranks: readonly Rank[] = first === "fewest" ? ["parts", "distance", ...REST] : ["distance", "parts", ...REST];
  return {
    best,
    reach: () => (best.length < length ? Number.POSITIVE_INFINITY : best[length - 1]!.distance),
    add(candidate) {
      if (best.some((other) => isSame(other, candidate))) return;
      const at = best.findIndex((other) => comesBefore(candidate, other, ranks));
      best.splice(at < 0 ? best.length : at, 0, candidate);
      if (best.length > length) best.pop();
    },
  };
}

type Rank = "distance" | "parts" | "price" | "hardest";
const REST = ["price", "hardest"] as const;

function comesBefore(a: Candidate, b: Candidate, ranks: readonly Rank[]): boolean {
  const rank = ranks.find((by) => a[by] !== b[by]);
  return rank ? a[rank] < b[rank] : a.key() < b.key();
}

/** Whether two candidates are one network: only those that are equally far off are worth comparing. */
function isSame(a: Candidate, b: Candidate): boolean {
  return Math.abs(a.distance - b.distance) < 1e-9 && a.parts === b.parts && a.key() === b.key();
}
