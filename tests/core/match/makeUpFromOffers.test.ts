import { describe, expect, test } from "vitest";
import { makeUpFromOffers } from "../../../src/core/index.js";
import { capacitorOf, offerOf, paperOf, ratingsOf } from "./makers.js";

/** 3.2 megohms within 2 %, 1 W, 700 V: no shop has one. */
const metering = ratingsOf({
  ...{ wanted: 3.2e6, window: { min: 3.136e6, max: 3.264e6 }, old: { min: 3.136e6, max: 3.264e6 } },
  ...{ leastWatts: 0.5, leastVolts: 600 },
});

describe("a value that nobody sells is made up from what they do", () => {
  test("two of 1.6 M in series share volts and watts: 2 x 350 V, 2 x 1 W", () => {
    const half = offerOf({ id: "1.6 M", value: 1.6e6 });
    const [found] = makeUpFromOffers(metering, [half, offerOf({ id: "1 M", value: 1e6 })]);
    expect(found?.offers).toEqual([half, half]);
    expect(found?.madeUp.value).toBe(3.2e6);
  });

  test("a part that bears too little of its share is not used", () => {
    expect(makeUpFromOffers(metering, [offerOf({ value: 1.6e6, volts: 200 })])).toEqual([]);
  });

  test("a body's usual volts stand in where the list is silent: 1 W metal film 350 V, from memory", () => {
    expect(makeUpFromOffers(metering, [offerOf({ value: 1.6e6, volts: null })])).toHaveLength(1);
  });

  test("by the strict gate tolerances count: ±5 % parts can't stay within ±2 %, ±1 % parts do", () => {
    const strict = { ...metering, gate: "contained" as const };
    expect(makeUpFromOffers(strict, [offerOf({ value: 1.6e6 })])).toEqual([]);
    const fine = offerOf({ value: 1.6e6, tolerance: { minus: 0.01, plus: 0.01 } });
    expect(makeUpFromOffers(strict, [fine])).toHaveLength(1);
  });

  test("of two alike the cheaper is used, and never one that is sold out", () => {
    const offers = [
      offerOf({ id: "dear", value: 1.6e6, breaks: [[1, 0.5]] }),
      offerOf({ id: "cheap", value: 1.6e6, breaks: [[1, 0.2]] }),
      offerOf({ id: "gone", value: 1.6e6, breaks: [[1, 0.1]], status: "out-of-stock" }),
    ];
    expect(makeUpFromOffers(metering, offers)[0]?.offers.map(({ id }) => id)).toEqual(["cheap", "cheap"]);
  });

  test("with one piece left there is no pair", () => {
    expect(makeUpFromOffers(metering, [offerOf({ value: 1.6e6, stock: 1 })])).toEqual([]);
  });

  test("nothing is made up for a place that demands a safety class", () => {
    expect(makeUpFromOffers(paperOf({ safety: "Y" }), [capacitorOf({ safetyClass: "Y2", value: 2.5e-8 })])).toEqual([]);
  });
});
