import fc from "fast-check";
import type { Basket, BasketLine, BasketOffer, Vendor } from "../../../src/core/index.js";

/** The rules of ordering that a random basket can have switched on. */
export const BASKET_RULES = [
  "packs",
  "breaks",
  "minimums and multiples",
  "short stock",
  "shared offers",
  "parts that must be alike",
  "free shipping",
  "minimum orders",
  "small-order fees",
  "a cap on vendors",
  "an excluded vendor",
  "currencies",
] as const;
export type BasketRule = (typeof BASKET_RULES)[number];

const cents = (min: number, max: number) => fc.integer({ min: min * 100, max: max * 100 }).map((c) => c / 100);
const when = <T>(on: boolean, arbitrary: fc.Arbitrary<T>, otherwise: T) => (on ? arbitrary : fc.constant(otherwise));

function vendorOf(id: string, on: (rule: BasketRule) => boolean): fc.Arbitrary<Vendor> {
  return fc.record({
    id: fc.constant(id),
    shipping: cents(0, 4),
    freeFrom: when(on("free shipping"), fc.option(cents(2, 8)), null),
    minimumOrder: when(on("minimum orders") || on("small-order fees"), fc.option(cents(1, 5)), null),
    smallOrderFee: when(on("small-order fees"), fc.option(cents(0, 2)), null),
    rate: when(on("currencies"), fc.constantFrom(1, 0.86, 1.25), 1),
  });
}

function offerOf(id: string, vendors: number, on: (rule: BasketRule) => boolean): fc.Arbitrary<BasketOffer> {
  return fc
    .record({
      vendor: fc.integer({ min: 1, max: vendors }).map((v) => `V${v}`),
      pack: when(on("packs"), fc.constantFrom(1, 2, 5), 1),
      minimum: when(on("minimums and multiples"), fc.integer({ min: 1, max: 3 }), 1),
      multiple: when(on("minimums and multiples"), fc.integer({ min: 1, max: 3 }), 1),
      stock: when(on("short stock"), fc.option(fc.integer({ min: 0, max: 5 })), null),
      price: cents(1, 3),
      broken: when(on("breaks"), fc.boolean(), false),
    })
    .map(({ price, broken, ...offer }) => {
      const breaks: [number, number][] = broken
        ? [
            [1, price],
            [4, Math.round(price * 70) / 100],
          ]
        : [[1, price]];
      return { id, ...offer, breaks };
    });
}

/** Small baskets with some rules switched on: 2 vendors, 3 or 4 offers, 2 or 3 lines of up to 4 pieces. */
export function randomBasket(rules: readonly BasketRule[]): fc.Arbitrary<Basket> {
  const on = (rule: BasketRule) => rules.includes(rule);
  const [VENDORS, OFFERS] = [2, 4];
  const vendors = fc.tuple(...Array.from({ length: VENDORS }, (_, i) => vendorOf(`V${i + 1}`, on)));
  const offers = fc.tuple(...Array.from({ length: OFFERS }, (_, i) => offerOf(`O${i + 1}`, VENDORS, on)));
  const fits = on("shared offers")
    ? fc.tuple(fc.subarray(["O1", "O2", "O3"], { minLength: 1 }), fc.subarray(["O2", "O3", "O4"], { minLength: 1 }))
    : fc.constant([
        ["O1", "O2"],
        ["O3", "O4"],
      ]);
  const line = (id: string, fit: readonly string[]): fc.Arbitrary<BasketLine> =>
    fc.record({
      id: fc.constant(id),
      pieces: fc.integer({ min: 1, max: 4 }),
      fits: fc.constant(fit),
      single: when(on("parts that must be alike"), fc.boolean(), false),
    });
  const lines = fits.chain(([a, b]) => fc.tuple(line("L1", a!), line("L2", b!)));
  const options = fc.constant({
    maxVendors: on("a cap on vendors") ? 1 : null,
    excluded: on("an excluded vendor") ? ["V2"] : [],
  });
  return fc.record({ vendors, offers, lines, options });
}
