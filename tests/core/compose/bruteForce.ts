import type { Network } from "../../../src/core/compose/network.js";
import type { StockPart } from "../../../src/core/compose/stock.js";
import type { Wants } from "../../../src/core/compose/wants.js";

/** A limit met to the last digit is met: three times a third of a watt is a watt. */
const MET = 1 + 1e-9;

/** A network found the long way. */
export type Found = { readonly network: Network<StockPart>; readonly parts: number; readonly distance: number };

/**
 * Every network of `count` parts that meets the wants, found by joining smaller ones in every way: it shares no code
 * with the search, and works each network out by sending a current through it.
 */
export function allThatMeet(wants: Wants, count: number): Found[] {
  return networks(wants.stock, count)
    .filter((network) => holds(network, wants))
    .map((network) => ({
      network,
      parts: count,
      distance: Math.abs(Math.log(measure(network, wants, nominal).value / wants.wanted)),
    }))
    .sort((a, b) => a.distance - b.distance);
}

/** Every network of `count` parts of the stock, some of them more than once. */
export function networks(stock: readonly StockPart[], count: number): Network<StockPart>[] {
  if (count === 1) return stock.map((part) => ({ part }));
  const all: Network<StockPart>[] = [];
  for (let left = 1; left <= count / 2; left++) {
    for (const a of networks(stock, left)) {
      for (const b of networks(stock, count - left)) all.push({ series: [a, b] }, { parallel: [a, b] });
    }
  }
  return all;
}

type Corner = (part: StockPart, at: number) => number;
const nominal: Corner = (part) => part.value;

function leavesOf(network: Network<StockPart>): StockPart[] {
  if ("part" in network) return [network.part];
  return ("series" in network ? network.series : network.parallel).flatMap(leavesOf);
}

function holds(network: Network<StockPart>, wants: Wants): boolean {
  const parts = leavesOf(network);
  const price = parts.reduce((sum, part) => sum + (part.price ?? Number.POSITIVE_INFINITY), 0);
  if (wants.mostPrice != null && price > wants.mostPrice * MET) return false;
  if (parts.some((part) => part.pieces !== null && parts.filter((other) => other === part).length > part.pieces))
    return false;
  if (!holdsAt(network, parts, wants, nominal)) return false;
  for (let ends = 0; ends < 2 ** parts.length; ends++) {
    const corner: Corner = ({ value, tolerance }, at) =>
      value * (ends & (1 << at) ? 1 + (tolerance?.plus ?? 0) : 1 - (tolerance?.minus ?? 0));
    if (!holdsAt(network, parts, wants, corner)) return false;
  }
  return true;
}

function holdsAt(network: Network<StockPart>, parts: StockPart[], wants: Wants, corner: Corner): boolean {
  const { value, loads } = measure(network, wants, corner);
  if (value * MET < wants.window.min || value > wants.window.max * MET) return false;
  const whole = loads.reduce((sum, load) => sum + load.volts * load.current, 0);
  return loads.every(({ volts, current, across }, at) => {
    const watts = ((volts * current) / whole) * (wants.watts ?? 0);
    const stress = (volts / across) * (wants.volts ?? 0);
    return (
      (!wants.watts || watts <= (parts[at]!.watts ?? 0) * (wants.powerLoad ?? 1) * MET) &&
      (!wants.volts || stress <= (parts[at]!.volts ?? 0) * (wants.voltsLoad ?? 1) * MET)
    );
  });
}

type Load = { readonly volts: number; readonly current: number; readonly across: number };

/** Sends one ampere (at one radian a second) through the network and looks at each part. */
function measure(network: Network<StockPart>, { kind }: Wants, corner: Corner) {
  let at = 0;
  const impedance = (part: StockPart, place: number) =>
    kind === "capacitor" ? 1 / corner(part, place) : corner(part, place);
  const numbered = number(network);
  const whole = resistance(numbered);
  const loads: Load[] = [];
  send(numbered, 1);
  return { value: kind === "capacitor" ? 1 / whole : whole, loads };

  function number(inner: Network<StockPart>): Network {
    if ("part" in inner) return { part: impedance(inner.part, at++) };
    return "series" in inner ? { series: inner.series.map(number) } : { parallel: inner.parallel.map(number) };
  }
  function send(inner: Network, current: number): void {
    if ("part" in inner) loads.push({ volts: current * inner.part, current, across: whole });
    else if ("series" in inner) for (const one of inner.series) send(one, current);
    else {
      const volts = current * resistance(inner);
      for (const one of inner.parallel) send(one, volts / resistance(one));
    }
  }
}

function resistance(network: Network): number {
  if ("part" in network) return network.part;
  if ("series" in network) return network.series.map(resistance).reduce((a, b) => a + b);
  return network.parallel.map(resistance).reduce((a, b) => (a * b) / (a + b));
}
