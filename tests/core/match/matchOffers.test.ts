import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Offer, Ratings } from "../../../src/core/index.js";
import { matchOffers } from "../../../src/core/match/matchOffers.js";
import { capacitorOf, offerOf, paperOf, ratingsOf } from "./makers.js";

const match = (ratings: Ratings, ...offers: Offer[]) => matchOffers(ratings, offers);
const why = (ratings: Ratings, offer: Offer) => match(ratings, offer).refused[0]?.why ?? "fits";
const notes = (ratings: Ratings, offer: Offer) => match(ratings, offer).matches[0]?.notes.map((note) => note.text);

describe("what is refused says why", () => {
  const refusals: [Ratings, Offer, string][] = [
    [ratingsOf(), offerOf(), "fits"],
    [ratingsOf(), offerOf({ value: 330_000 }), "330 k is outside 376 k to 564 k"],
    [ratingsOf(), offerOf({ value: null }), "no value stated"],
    [ratingsOf(), offerOf({ watts: 0.25 }), "0.25 W where 0.5 W is needed"],
    [ratingsOf(), offerOf({ watts: null }), "watts not stated, 0.5 W needed"],
    [ratingsOf({ mostWatts: 0.5 }), offerOf(), "1 W where 0.5 W is the most"],
    [ratingsOf(), offerOf({ volts: 250 }), "250 V where 300 V is needed"],
    [paperOf(), capacitorOf({ volts: null }), "volts not stated, 400 V needed"],
    [paperOf({ voltsKind: "ac" }), capacitorOf(), "630 V is a d.c. rating, the place is a.c."],
    [ratingsOf({ tolerance: { minus: 0.02, plus: 0.02 } }), offerOf(), "±5 % where ±2 % is needed"],
    [
      ratingsOf(),
      offerOf({ technology: ["carbon-film"] }),
      "carbon-film; wanted: Metal film or Metal oxide, flameproof",
    ],
    [ratingsOf(), offerOf({ technology: [] }), "type not stated; wanted: Metal film or Metal oxide, flameproof"],
    [paperOf({ safety: "Y" }), capacitorOf({ safetyClass: "X2" }), "class X2 where class Y is needed"],
    [paperOf({ safety: "X" }), capacitorOf(), "no safety class where class X is needed"],
    [paperOf({ temperatureCoefficient: "N750" }), capacitorOf(), "temperature code not stated where N750 is needed"],
    [ratingsOf({ taper: "audio" }), offerOf({ taper: "linear" }), "linear taper where audio is needed"],
    [
      ratingsOf({ room: { lengthMetres: 0.01, diameterMetres: null } }),
      offerOf({ lengthMetres: 0.011 }),
      "11 mm long where there is room for 10 mm",
    ],
    [ratingsOf(), offerOf({ status: "out-of-stock" }), "out of stock"],
    [ratingsOf(), offerOf({ stock: 0 }), "none in stock"],
    [ratingsOf(), offerOf({ status: "discontinued" }), "no longer made"],
    [ratingsOf(), offerOf({ watts: 0.25, volts: 200 }), "200 V where 300 V is needed; 0.25 W where 0.5 W is needed"],
  ];

  test.each(refusals.map(([ratings, offer, expected]) => ({ ratings, offer, expected })))(
    "$expected",
    ({ ratings, offer, expected }) => expect(why(ratings, offer)).toBe(expected),
  );
});

describe("what fits says what is tight or over", () => {
  test.each<[string, Ratings, Offer, readonly string[]]>([
    ["less watts than aimed at", ratingsOf(), offerOf({ watts: 0.5 }), ["0.5 W is enough, 1 W was aimed at"]],
    ["a 5 W body for a 1 W aim", ratingsOf(), offerOf({ watts: 5 }), ["5 W, 1 W was asked for: a larger body"]],
    ["volts between need and aim", paperOf(), capacitorOf({ volts: 400 }), ["400 V is enough, 630 V was aimed at"]],
    [
      "a list that states no body volts",
      ratingsOf(),
      offerOf({ volts: null }),
      ["volts not stated: see that its body bears 300 V"],
    ],
    ["new-old-stock", ratingsOf(), offerOf({ newOldStock: true }), ["measure before fitting"]],
    ["short stock", ratingsOf(), offerOf({ status: "last-time-buy" }), ["last chance to buy"]],
    [
      "an a.c. rating in a d.c. place",
      paperOf({ leastVolts: 250, wantVolts: null }),
      capacitorOf({ volts: 275, voltsKind: "ac" }),
      [],
    ],
    ["a Y part in an X place", paperOf({ safety: "X" }), capacitorOf({ safetyClass: "Y2" }), []],
    [
      "one temperature code in two writings",
      paperOf({ temperatureCoefficient: "NP0" }),
      capacitorOf({ temperatureCoefficient: "C0G" }),
      [],
    ],
  ])("%s", (_why, ratings, offer, expected) => expect(notes(ratings, offer)).toEqual(expected));

  test("0.022 µF ±10 % for an old .02 ±20 % reaches 0.0242, 0.83 % past 0.024: told by the nominal gate, refused by the strict one", () => {
    const ratings = paperOf({ wanted: 2e-8, window: { min: 1.6e-8, max: 2.4e-8 }, old: { min: 1.6e-8, max: 2.4e-8 } });
    const offer = capacitorOf({ value: 2.2e-8 });
    expect(notes(ratings, offer)).toEqual([
      "may be 0.0198 µF to 0.0242 µF, 0.83 % beyond the old 0.016 µF to 0.024 µF",
    ]);
    expect(match({ ...ratings, gate: "contained" }, offer).matches).toEqual([]);
  });

  test("what a body commonly bears stands in for volts that a list leaves unsaid", () => {
    // 1/2 W metal film 250 V, 1 W 350 V (from memory; see the table of body volts)
    const offer = offerOf({ watts: 0.5, volts: null });
    expect(why(ratingsOf(), offer)).toBe("volts not stated; such a body commonly bears 250 V, 300 V is needed");
  });
});

describe("the best stands first", () => {
  const first = (ratings: Ratings, ...offers: Offer[]) =>
    match(ratings, ...offers).matches.map(({ offer }) => offer.id);

  test.each<[string, Ratings, Offer[], string[]]>([
    [
      "the rule's first technology before its second",
      ratingsOf(),
      [offerOf({ id: "oxide", technology: ["metal-oxide"] }), offerOf({ id: "film" })],
      ["film", "oxide"],
    ],
    [
      "nothing to look at before something",
      ratingsOf(),
      [offerOf({ id: "tight", watts: 0.5 }), offerOf({ id: "good" })],
      ["good", "tight"],
    ],
    [
      "made today before to be measured first",
      ratingsOf(),
      [offerOf({ id: "old", newOldStock: true }), offerOf({ id: "new" })],
      ["new", "old"],
    ],
    [
      "nearer by ratio before farther",
      ratingsOf(),
      [offerOf({ id: "510", value: 510_000 }), offerOf({ id: "470" })],
      ["470", "510"],
    ],
    [
      "cheaper before dearer",
      ratingsOf(),
      [offerOf({ id: "dear", breaks: [[1, 0.2]] }), offerOf({ id: "cheap" })],
      ["cheap", "dear"],
    ],
    [
      "a pack counts by the piece",
      ratingsOf(),
      [offerOf({ id: "one" }), offerOf({ id: "ten", pack: 10, breaks: [[1, 0.9]] })],
      ["ten", "one"],
    ],
  ])("%s", (_why, ratings, offers, expected) => expect(first(ratings, ...offers)).toEqual(expected));

  test("the user's pick outranks, even one that a limit refuses", () => {
    const offers = [offerOf({ id: "good" }), offerOf({ id: "small", watts: 0.25 })];
    const { matches, refused } = matchOffers(ratingsOf(), offers, { pick: "small" });
    expect(matches.map(({ offer }) => offer.id)).toEqual(["small", "good"]);
    expect(matches[0]?.notes[0]).toMatchObject({ weight: "out", text: "0.25 W where 0.5 W is needed" });
    expect(refused).toEqual([]);
  });

  test("parts of another kind are neither matched nor refused", () => {
    expect(match(ratingsOf(), capacitorOf())).toEqual({ matches: [], refused: [] });
  });
});

describe("laws", () => {
  const anyOffer = fc.record({
    value: fc.constantFrom(330_000, 430_000, 470_000, 510_000, 1e6),
    watts: fc.constantFrom(0.25, 0.5, 1, 2),
    volts: fc.constantFrom(null, 200, 350, 500),
    technology: fc.constantFrom(["metal-film"], ["metal-oxide"], ["carbon-film"]),
    stock: fc.constantFrom(null, 0, 5),
  });
  const offers = fc
    .array(anyOffer, { maxLength: 12 })
    .map((list) => list.map((o, i) => offerOf({ ...o, id: `O${i}` })));
  const idsOf = (ratings: Ratings, list: Offer[]) => match(ratings, ...list).matches.map(({ offer }) => offer.id);

  test("a looser rating never removes a match", () => {
    const looser: Partial<Ratings>[] = [
      { leastWatts: 0.25 },
      { leastVolts: 200 },
      { window: { min: 300_000, max: 1e6 } },
      { technologies: ["metal_film", "metal_oxide", "carbon_comp_new"] },
      { gate: "none" },
    ];
    fc.assert(
      fc.property(offers, fc.constantFrom(...looser), fc.constantFrom("nominal", "contained"), (list, loose, gate) => {
        const strict = idsOf(ratingsOf({ gate }), list);
        const wide = new Set(idsOf(ratingsOf({ gate, ...loose }), list));
        expect(strict.filter((id) => !wide.has(id))).toEqual([]);
      }),
    );
  });

  test("every offer of the kind is matched or refused, once", () => {
    fc.assert(
      fc.property(offers, (list) => {
        const { matches, refused } = match(ratingsOf(), ...list);
        const seen = [...matches, ...refused].map(({ offer }) => offer.id).sort();
        expect(seen).toEqual(list.map(({ id }) => id).sort());
      }),
    );
  });
});
