import { mapNetwork, type Network, opposition, oppositionOf, partsOf } from "./network.js";
import { sharesBy } from "./shares.js";
import type { StockPart } from "./stock.js";
import { bearableVolts, bearableWatts, type Wants } from "./wants.js";

/** A limit met to the last digit is met, whatever arithmetic in double precision makes of it. */
export const SLACK = 1e-9;

/** Whether as many pieces as the parts need are at hand, and what they cost may be spent. */
export function areToBeHad(parts: readonly StockPart[], { mostPrice }: Wants): boolean {
  let price = 0;
  for (const part of parts) {
    price += part.price ?? Number.POSITIVE_INFINITY;
    if (part.pieces !== null && parts.filter((other) => other === part).length > part.pieces) return false;
  }
  return mostPrice == null || price <= mostPrice * (1 + SLACK);
}

/** Whether value and ratings hold with each part at its printed value, and at either end of its tolerance. */
export function holds(network: Network<StockPart>, wants: Wants): boolean {
  let count = 0;
  const places = mapNetwork(network, () => count++);
  const parts = partsOf(network);
  const printed = parts.map(({ value }) => value);
  if (!holdsAt(places, parts, printed, wants)) return false;
  const hasTolerance = parts.some(({ tolerance }) => tolerance !== null);
  return !hasTolerance || corners(parts).every((values) => holdsAt(places, parts, values, wants));
}

function holdsAt(places: Network, parts: readonly StockPart[], values: readonly number[], wants: Wants): boolean {
  const { kind, window } = wants;
  const of = (place: number) => opposition(values[place]!, kind);
  const value = opposition(oppositionOf(places, of), kind);
  if (value < window.min * (1 - SLACK) || value > window.max * (1 + SLACK)) return false;
  if (!wants.watts && !wants.volts) return true;
  return sharesBy(places, of).every(
    ({ power, volts }, i) =>
      power * (wants.watts ?? 0) <= bearableWatts(parts[i]!, wants) * (1 + SLACK) &&
      volts * (wants.volts ?? 0) <= bearableVolts(parts[i]!, wants) * (1 + SLACK),
  );
}

/** The values of the parts at every combination of the ends of their tolerances. */
function corners(parts: readonly StockPart[]): number[][] {
  const ends = ({ value, tolerance }: StockPart) =>
    tolerance ? [value * (1 + tolerance.plus), value * (1 - tolerance.minus)] : [value];
  return parts
    .map(ends)
    .reduce<number[][]>((rows, both) => rows.flatMap((row) => both.map((end) => [...row, end])), [[]]);
}
