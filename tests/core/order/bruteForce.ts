import type { Basket, BasketOffer } from "../../../src/core/index.js";

/** More units than this of one offer are not tried: the small problems of the tests never profit from them. */
const MOST_UNITS = 14;

type Bought = ReadonlyMap<string, number>;

/** The least cost of a basket by trying every number of units of every offer; infinite where no plan exists. Shares no code with the core. */
export function leastCostByTrying(basket: Basket): number {
  const offers = basket.offers.filter(({ id }) => basket.lines.some(({ fits }) => fits.includes(id)));
  let least = Number.POSITIVE_INFINITY;
  const choose = (at: number, bought: Map<string, number>): void => {
    const offer = offers[at];
    if (!offer) {
      const cost = costByTheBook(basket, bought);
      if (cost < least && canServe(basket, bought)) least = cost;
      return;
    }
    for (const units of unitsToTry(offer)) choose(at + 1, new Map(bought).set(offer.id, units));
  };
  choose(0, new Map());
  return least;
}

function unitsToTry({ minimum, multiple, stock }: BasketOffer): number[] {
  const counts = Array.from({ length: MOST_UNITS + 1 }, (_, units) => units);
  return counts.filter(
    (units) => units === 0 || (units >= minimum && units % multiple === 0 && units <= (stock ?? MOST_UNITS)),
  );
}

/** Goods, shipping, free shipping, minimum and fee as the definition of the problem states them. */
function costByTheBook(basket: Basket, bought: Bought): number {
  let [cost, vendors] = [0, 0];
  for (const vendor of basket.vendors) {
    const ordered = basket.offers.filter((offer) => offer.vendor === vendor.id && (bought.get(offer.id) ?? 0) > 0);
    if (ordered.length === 0) continue;
    vendors++;
    if (basket.options.excluded.includes(vendor.id)) return Number.POSITIVE_INFINITY;
    let goods = 0;
    for (const { id, breaks } of ordered) {
      const units = bought.get(id)!;
      const reached = breaks.filter(([from]) => from <= units);
      if (reached.length === 0) return Number.POSITIVE_INFINITY;
      goods += units * reached[reached.length - 1]![1];
    }
    const small = vendor.minimumOrder !== null && goods < vendor.minimumOrder - 1e-9;
    if (small && vendor.smallOrderFee === null) return Number.POSITIVE_INFINITY;
    const free = vendor.freeFrom !== null && goods >= vendor.freeFrom - 1e-9;
    cost += (goods + (free ? 0 : vendor.shipping) + (small ? vendor.smallOrderFee! : 0)) * vendor.rate;
  }
  return vendors > (basket.options.maxVendors ?? vendors) ? Number.POSITIVE_INFINITY : cost;
}

/** Whether the pieces bought can be dealt out: each line in turn tries every split over the offers that fit it. */
function canServe(basket: Basket, bought: Bought): boolean {
  const left = new Map(basket.offers.map(({ id, pack }) => [id, (bought.get(id) ?? 0) * pack]));
  const serve = (at: number): boolean => {
    const line = basket.lines[at];
    if (!line) return true;
    const deal = (missing: number, from: number): boolean => {
      if (missing === 0) return serve(at + 1);
      const id = line.fits[from];
      if (id === undefined) return false;
      const there = left.get(id) ?? 0;
      const counts = line.single ? [line.pieces, 0] : Array.from({ length: missing + 1 }, (_, i) => missing - i);
      for (const count of counts.filter((pieces) => pieces <= there)) {
        left.set(id, there - count);
        if (deal(missing - count, from + 1)) return true;
        left.set(id, there);
      }
      return false;
    };
    return deal(line.pieces, 0);
  };
  return serve(0);
}
