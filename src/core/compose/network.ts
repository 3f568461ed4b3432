import type { Kind } from "../part.js";

/**
 * Several parts joined in series and in parallel; a leaf is a value in base units, or whatever else stands for a part.
 *
 * @example { series: [{ part: 1_600_000 }, { part: 1_600_000 }] }
 */
export type Network<P = number> =
  | { readonly part: P }
  | { readonly series: readonly Network<P>[] }
  | { readonly parallel: readonly Network<P>[] };

/** The parts of a network in the order in which they are written. */
export function partsOf<P>(network: Network<P>): P[] {
  if ("part" in network) return [network.part];
  return ("series" in network ? network.series : network.parallel).flatMap(partsOf);
}

/** The same network with something else at each part. */
export function mapNetwork<P, Q>(network: Network<P>, change: (part: P) => Q): Network<Q> {
  const inner = (network: Network<P>) => mapNetwork(network, change);
  if ("part" in network) return { part: change(network.part) };
  return "series" in network ? { series: network.series.map(inner) } : { parallel: network.parallel.map(inner) };
}

/**
 * How much a part of this value resists, on a scale where series adds: a capacitor's is the reciprocal of its farads.
 * Its own inverse: the same call turns it back into the value.
 */
export function opposition(value: number, kind: Kind): number {
  return kind === "capacitor" ? 1 / value : value;
}

/**
 * What a network comes to, in the unit of its parts. Resistors and uncoupled coils add in series, capacitors in parallel.
 *
 * @see OpenStax, College Physics, "Resistors in Series and Parallel" and "Capacitors in Series and Parallel"
 * @example networkValue({ parallel: [{ part: 220e-12 }, { part: 30e-12 }] }, "capacitor") // 250e-12
 */
export function networkValue(network: Network, kind: Kind): number {
  return opposition(
    oppositionOf(network, (value) => opposition(value, kind)),
    kind,
  );
}

/** What a network opposes, when `of` says what each part does; see `opposition`. */
export function oppositionOf<P>(network: Network<P>, of: (part: P) => number): number {
  if ("part" in network) return of(network.part);
  let sum = 0;
  if ("series" in network) {
    for (const inner of network.series) sum += oppositionOf(inner, of);
    return sum;
  }
  for (const inner of network.parallel) sum += 1 / oppositionOf(inner, of);
  return 1 / sum;
}

/** The same network written with the larger value first in each group, as `220 pF || 30 pF` is usually drawn. */
export function largestFirst<P extends { readonly value: number }>(network: Network<P>, kind: Kind): Network<P> {
  if ("part" in network) return network;
  const ordered = (members: readonly Network<P>[]) =>
    members
      .map((member) => largestFirst(member, kind))
      .sort((a, b) => networkValue(withValues(b), kind) - networkValue(withValues(a), kind));
  return "series" in network ? { series: ordered(network.series) } : { parallel: ordered(network.parallel) };
}

/** A network of parts as one of their values. */
export function withValues(network: Network<{ readonly value: number }>): Network {
  return mapNetwork(network, ({ value }) => value);
}
