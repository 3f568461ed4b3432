import type { Kind } from "../part.js";
import { type Network, opposition, oppositionOf } from "./network.js";

/**
 * What one part of a network bears, as ratios of what the whole bears: of its volts, of its current, and of its power.
 */
export type Share = { readonly volts: number; readonly current: number; readonly power: number };

/**
 * What each part bears, in the order in which the network is written.
 *
 * For capacitors this is the share by capacitance (alternating current, or the moment of charging); after a while at DC
 * leakage or balancing resistors decide instead. Their `power` is the share of the stored energy.
 *
 * @example sharesOf({ series: [{ part: 220_000 }, { part: 100_000 }] }, "resistor")[0].volts // 0.6875
 */
export function sharesOf(network: Network, kind: Kind): Share[] {
  return sharesBy(network, (value) => opposition(value, kind));
}

/** The same when `of` says what each part opposes; see `opposition`. */
export function sharesBy<P>(network: Network<P>, of: (part: P) => number): Share[] {
  const shares: Share[] = [];
  walk(network, oppositionOf(network, of), 1, 1);
  return shares;

  function walk(inner: Network<P>, whole: number, volts: number, current: number): void {
    if ("part" in inner) {
      shares.push({ volts, current, power: volts * current });
      return;
    }
    for (const one of "series" in inner ? inner.series : inner.parallel) {
      const own = oppositionOf(one, of);
      if ("series" in inner) walk(one, own, (volts * own) / whole, current);
      else walk(one, own, volts, (current * whole) / own);
    }
  }
}
