import { describe, expect, test } from "vitest";
import type { Offer, Ratings } from "../../../src/core/index.js";
import { easings } from "../../../src/core/match/easing.js";
import { matchOffers } from "../../../src/core/match/matchOffers.js";
import { capacitorOf, offerOf, paperOf, ratingsOf } from "./makers.js";

const textsOf = (ratings: Ratings, ...offers: Offer[]) =>
  easings(ratings, matchOffers(ratings, offers).refused).map(({ text }) => text);

describe("where nothing fits, the one limit whose easing lets something in", () => {
  test("three at 500 V and one at 400 V: the nearer step is told, with all it lets in", () => {
    const offers = [500, 500, 500, 400].map((volts, i) => capacitorOf({ id: `C${i}`, volts }));
    expect(textsOf(paperOf({ leastVolts: 630 }), ...offers)).toEqual(["With 500 V instead of 630 V, 3 would fit."]);
  });

  test.each<[string, Ratings, Offer, readonly string[]]>([
    ["watts below", ratingsOf({ leastWatts: 2 }), offerOf(), ["With 1 W instead of 2 W, one would fit."]],
    [
      "watts above what may be",
      ratingsOf({ mostWatts: 0.5 }),
      offerOf(),
      ["With 1 W instead of 0.5 W, one would fit."],
    ],
    ["value", ratingsOf(), offerOf({ value: 680_000 }), ["With 680 k instead of 470 k, one would fit."]],
    [
      "tolerance",
      ratingsOf({ tolerance: { minus: 0.01, plus: 0.01 } }),
      offerOf(),
      ["With ±5 % instead of ±1 %, one would fit."],
    ],
    ["type", ratingsOf(), offerOf({ technology: ["carbon-film"] }), ["With another type, one would fit."]],
    ["two reasons help no single easing", ratingsOf(), offerOf({ watts: 0.25, volts: 200 }), []],
    ["a safety class is never eased", paperOf({ safety: "Y" }), capacitorOf(), []],
    ["volts ease by a step, not to a fifth", paperOf({ leastVolts: 1600 }), capacitorOf({ volts: 310 }), []],
    ["a d.c. part is never let into an a.c. place", paperOf({ voltsKind: "ac" }), capacitorOf(), []],
    ["what is out of stock is no limit of ours", ratingsOf(), offerOf({ stock: 0 }), []],
  ])("%s", (_why, ratings, offer, expected) => expect(textsOf(ratings, offer)).toEqual(expected));

  test("a strict gate is eased to the nominal one before another value is offered", () => {
    const ratings = ratingsOf({
      gate: "contained",
      old: { min: 465_300, max: 474_700 },
      window: { min: 465_300, max: 474_700 },
    });
    expect(textsOf(ratings, offerOf())).toEqual(["With its limits not held to the old part's, one would fit."]);
  });
});
