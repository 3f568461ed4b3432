import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { indexOffers, matchOffers, type Offer, offersInPlay, type Ratings } from "../../../src/core/index.js";
import { capacitorOf, offerOf, paperOf, ratingsOf } from "./makers.js";

const VALUES = [4.6e-8, 4.7e-8, 4.7e-8, 4.7000000001e-8, 5e-8, 5.6e-8, 1e-7, null];
const OHMS = [390_000, 430_000, 470_000, 470_000, 499_000, 560_000, 1e6, null];

/** Offers and ratings from few choices each, so that ties, gaps and refusals are frequent. */
const any = <T>(...choices: T[]) => fc.constantFrom(...choices);
const supply = {
  stock: any(null, 0, 3, 500),
  status: any<Offer["status"]>("in-stock", "in-stock", "out-of-stock", "last-time-buy", "discontinued"),
  pack: any(1, 10),
  minimum: any(1, 5),
  breaks: any<Offer["breaks"]>([], [[1, 0.1]], [[1, 0.2], [10, 0.05]], [[5, 0.1]]), // biome-ignore format: one line
  newOldStock: any(false, false, true),
  lengthMetres: any(null, 0.006, 0.015),
  tolerance: any(null, { minus: 0.05, plus: 0.05 }, { minus: 0.2, plus: 0.8 }),
  description: any("resistor", "ceramic pulse", "non-polar foil"),
};
const resistor = fc
  .record({ ...supply, value: any(...OHMS), watts: any(null, 0.25, 1, 2), volts: any(null, 350, 500) })
  .chain((fields) =>
    any(["metal-film"], ["metal-oxide"], ["composition"]).map((technology) => offerOf({ ...fields, technology })),
  );
const capacitor = fc
  .record({ ...supply, value: any(...VALUES), volts: any(null, 250, 400, 630), safetyClass: any(null, "X2", "X1/Y2") })
  .chain((fields) =>
    fc
      .tuple(
        any(["film", "polyester"], ["film", "polypropylene"], ["ceramic"]),
        any<Offer["voltsKind"]>(null, "ac", "dc"),
      )
      .map(([technology, voltsKind]) => capacitorOf({ ...fields, technology, voltsKind })),
  );
const lamp = fc
  .record({ ...supply, volts: any(6.3, 2.5) })
  .map((fields) => offerOf({ ...fields, kind: "lamp", value: null }));
const offers = fc
  .array(fc.oneof(resistor, capacitor, lamp), { maxLength: 60 })
  .map((list) => list.map((offer, i) => ({ ...offer, id: `O-${i}`, row: i + 1 })));

const places: readonly Ratings[] = [
  ratingsOf(),
  ratingsOf({ gate: "contained", leastVolts: 400, technologies: ["metal_film_large", "metal_oxide"] }),
  ratingsOf({ technologies: ["carbon_comp_new", "ceramic_comp"], leastVolts: null }),
  ratingsOf({
    technologies: [],
    gate: "none",
    wanted: null,
    window: null,
    leastWatts: null,
    wantWatts: null,
    leastVolts: null,
  }),
  paperOf(),
  paperOf({ voltsKind: "ac", safety: "Y", technologies: ["y_class", "x_class"], leastVolts: 250, wantVolts: null }),
  paperOf({
    tolerance: { minus: 0.1, plus: 0.1 },
    technologies: ["film_dc", "polyester"],
    room: { lengthMetres: 0.01, diameterMetres: null },
  }),
  ratingsOf({
    kind: "lamp",
    wanted: null,
    window: null,
    old: null,
    gate: "none",
    technologies: [],
    leastWatts: null,
    wantWatts: null,
    leastVolts: 6.3,
  }),
];

describe("a long list is matched as a short one", () => {
  test("the index gives the very matches that the matcher puts first", () => {
    fc.assert(
      fc.property(
        offers,
        fc.constantFrom(...places),
        any(1, 7, 40),
        any(1, 5, Number.POSITIVE_INFINITY),
        (list, ratings, pieces, most) => {
          const best = offersInPlay(indexOffers(list), (row) => list[row]!)(ratings, { pieces, most });
          expect(best).toEqual(matchOffers(ratings, list, { pieces }).matches.slice(0, most));
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("one index answers for many parts, each as if it were the first", () => {
    const list = fc
      .sample(offers, { numRuns: 30, seed: 7 })
      .flat()
      .map((offer, i) => ({ ...offer, id: `O-${i}` }));
    const find = offersInPlay(indexOffers(list), (row) => list[row]!);
    for (const ratings of [...places, ...places]) {
      expect(find(ratings)).toEqual(matchOffers(ratings, list).matches);
    }
  });
});
