import type { Basket, BasketLine, BasketOffer, Vendor } from "../../src/core/index.js";

/** Numbers from 0 to 1 that are the same in every run (mulberry32, public domain). */
export function sameEveryTime(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** How large a season's order is, and whether vendors have thresholds. */
export type Size = { readonly lines: number; readonly vendors: number; readonly thresholds: boolean };

/** An invented season's basket: one to four vendors a line, packs, breaks, some short stock. */
export function seasonOf({ lines, vendors, thresholds }: Size): Basket {
  const next = sameEveryTime(lines + vendors);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  const cents = (money: number) => Math.max(0.01, Math.round(money * 100) / 100);
  const sellers = Array.from({ length: vendors }, (_, i): Vendor => {
    const minimumOrder = thresholds ? pick([null, 10, 25, 50]) : null;
    const smallOrderFee = minimumOrder === null ? null : pick([null, 3, 7.5]);
    const freeFrom = thresholds ? pick([null, 40, 80, 160]) : null;
    return { id: `V${i}`, shipping: cents(3 + 9 * next()), freeFrom, minimumOrder, smallOrderFee, rate: 1 };
  });
  const offers: BasketOffer[] = [];
  const wants = Array.from({ length: lines }, (_, i): BasketLine => {
    const [pieces, usual] = [1 + Math.floor(next() * 24), 0.05 * 60 ** next()];
    const from = [...sellers].sort(() => next() - 0.5).slice(0, pick([1, 2, 3, 4]));
    const found = from.map(({ id: vendor }, k): BasketOffer => {
      const pack = pick([1, 1, 1, 5, 10, 25]);
      const price = usual * (0.75 + 0.6 * next()) * pack;
      const breaks = pick([[1], [1, 10], [1, 10, 25], [1, 5, 25]]).map(
        (units, at) => [units, cents(price * 0.88 ** at)] as const,
      );
      const stock = k > 0 && next() < 0.2 ? Math.ceil((next() * pieces) / pack) : null;
      return { id: `${vendor}-${i}`, vendor, pack, minimum: 1, multiple: 1, stock, breaks };
    });
    offers.push(...found);
    return { id: `L${i}`, pieces, fits: found.map(({ id }) => id), single: false };
  });
  return { vendors: sellers, offers, lines: wants, options: { maxVendors: null, excluded: [] } };
}
