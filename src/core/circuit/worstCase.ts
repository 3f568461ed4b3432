import { mapNetwork, type Network, networkValue, partsOf, withValues } from "../compose/network.js";
import { sharesOf } from "../compose/shares.js";
import type { Kind, Span, Tolerance } from "../part.js";

/** A part of a network with its tolerance. */
export type TolerantPart = { readonly value: number; readonly tolerance: Tolerance };

/** What a network comes to: nominally, at worst, and as likely as root-sum-square has it. */
export type Spread = { readonly nominal: number; readonly worst: Span; readonly likely: Span };

/**
 * How far a network of parts may lie from its nominal value.
 *
 * "Worst": all parts at their low ends, and all at their high ends; more ohms (or farads) in any part never make the whole
 * smaller, so no other corner is worse. "Likely": the parts' tolerances, each weighed by its share of the power (for
 * capacitors, of the energy), added as root of the sum of squares; it supposes that parts err independently.
 *
 * @returns Spans in the unit of the parts.
 * @example worstCase({ series: [{ part: a }, { part: a }] }, "resistor") // two of 5 %: worst 5 %, likely 3.54 %
 */
export function worstCase(network: Network<TolerantPart>, kind: Kind): Spread {
  const nominal = networkValue(withValues(network), kind);
  const corner = (of: (part: TolerantPart) => number) => networkValue(mapNetwork(network, of), kind);
  const worst = {
    min: corner(({ value, tolerance }) => value * (1 - tolerance.minus)),
    max: corner(({ value, tolerance }) => value * (1 + tolerance.plus)),
  };
  const weights = sharesOf(withValues(network), kind).map((share) => share.power);
  const parts = partsOf(network);
  const rootSumSquare = (of: (tolerance: Tolerance) => number) =>
    Math.sqrt(weights.reduce((sum, weight, index) => sum + (weight * of(parts[index]!.tolerance)) ** 2, 0));
  const likely = {
    min: nominal * (1 - rootSumSquare(({ minus }) => minus)),
    max: nominal * (1 + rootSumSquare(({ plus }) => plus)),
  };
  return { nominal, worst, likely };
}
