import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeUp, makingUp } from "../../../src/core/compose/makeUp.js";
import { partsOf } from "../../../src/core/compose/network.js";
import { type StockPart, stockOf } from "../../../src/core/compose/stock.js";
import type { Wants } from "../../../src/core/compose/wants.js";
import { allThatMeet } from "./bruteForce.js";

const E6 = [10, 15, 22, 33, 47, 68];

/** Parts of invented drawers: values over two decades, ratings and prices of a few usual steps. */
const stockPart: fc.Arbitrary<StockPart> = fc.record({
  value: fc.double({ min: 10, max: 1000, noNaN: true }).map((value) => value * Math.SQRT2),
  watts: fc.constantFrom(0.25, 0.5, 1, 2),
  volts: fc.constantFrom(200, 350, 500),
  tolerance: fc.constantFrom(null, { minus: 0.01, plus: 0.01 }, { minus: 0.05, plus: 0.05 }),
  price: fc.constantFrom(0.1, 0.2, 0.5),
  pieces: fc.constantFrom(null, null, 1, 2),
});

const wants = (parts: number, stockLength: number): fc.Arbitrary<Wants> =>
  fc
    .record({
      kind: fc.constantFrom("resistor" as const, "capacitor" as const),
      stock: fc.array(stockPart, { minLength: 2, maxLength: stockLength }),
      wanted: fc.double({ min: 5, max: 3000, noNaN: true }).map((value) => value / Math.sqrt(3)),
      within: fc.constantFrom(0.02, 0.1, 0.5),
      watts: fc.constantFrom(null, 0.4, 1, 2.5),
      volts: fc.constantFrom(null, 250, 600),
      powerLoad: fc.constantFrom(0.5, 0.8, 1),
      mostPrice: fc.constantFrom(null, 0.4, 0.9),
      first: fc.constantFrom("nearest" as const, "fewest" as const),
    })
    .map(({ within, ...rest }) => ({
      ...rest,
      watts: rest.kind === "resistor" ? rest.watts : null,
      window: { min: rest.wanted * (1 - within), max: rest.wanted * (1 + within) },
      leastParts: parts,
      mostParts: parts,
    }));

describe("the search finds what trying everything finds", () => {
  test.each([
    [1, 8, 300, "one part"],
    [2, 8, 500, "two parts"],
    [3, 6, 300, "three parts"],
    [4, 5, 150, "four parts"],
  ])(
    "%i of up to %i values, ratings, tolerances, prices and pieces binding (%i times): %s",
    (parts, stock, numRuns) => {
      fc.assert(
        fc.property(wants(parts, stock), (wants) => {
          const best = allThatMeet(wants, parts)[0];
          const { found, complete } = makeUp(wants);
          expect(complete).toBe(true);
          expect(found.length).toBe(best ? 1 : 0);
          if (best) expect(Math.abs(Math.log(found[0]!.value / wants.wanted))).toBeCloseTo(best.distance, 10);
        }),
        { numRuns },
      );
    },
  );

  test("where four parts barely bear the whole, so that all but even networks are passed over unseen", () => {
    const tight = wants(4, 5).chain((base) =>
      fc.constantFrom(1.6, 1.8, 1.9, 1.99).map((watts) => ({
        ...base,
        stock: base.stock.map((part) => ({ ...part, watts: 0.5, pieces: null })),
        ...{ kind: "resistor" as const, watts, volts: null, powerLoad: 1, mostPrice: null },
        window: { min: base.wanted * 0.5, max: base.wanted * 2 },
      })),
    );
    fc.assert(
      fc.property(tight, (wants) => {
        const best = allThatMeet(wants, 4)[0];
        const { found } = makeUp(wants);
        expect(found.length).toBe(best ? 1 : 0);
        if (best) expect(Math.abs(Math.log(found[0]!.value / wants.wanted))).toBeCloseTo(best.distance, 10);
      }),
      { numRuns: 60 },
    );
  });

  test("fewest parts first takes the smallest number of parts that any network needs", () => {
    fc.assert(
      fc.property(wants(1, 5), (wants) => {
        const counts = [1, 2, 3].filter((count) => allThatMeet(wants, count).length > 0);
        const { found } = makeUp({ ...wants, leastParts: 1, mostParts: 3, first: "fewest" });
        expect(found[0]?.parts.length).toBe(counts[0]);
      }),
      { numRuns: 100 },
    );
  });

  test("a list holds the best few, each once", () => {
    const wants: Wants = {
      kind: "resistor",
      wanted: 1000 * Math.PI,
      window: { min: 2500, max: 4000 },
      stock: stockOf(E6.map((value) => value * 100)),
      mostParts: 3,
      list: 12,
      first: "nearest",
    };
    const values = [1, 2, 3].flatMap((count) => allThatMeet(wants, count)).map(({ distance }) => distance);
    const listed = makeUp(wants).found.map(({ value }) => Math.abs(Math.log(value / wants.wanted)));
    const best = [...new Set(values.map((distance) => distance.toFixed(10)))].sort().slice(0, 5);
    expect([...new Set(listed.map((distance) => distance.toFixed(10)))].slice(0, 5)).toEqual(best);
    expect(listed).toHaveLength(12);
  });
});

describe("values that the trade makes up", () => {
  const made = (
    wanted: number,
    kind: "resistor" | "capacitor",
    stock: readonly number[],
    only: "series" | "parallel",
  ) =>
    makeUp({
      kind,
      wanted,
      only,
      window: { min: wanted * 0.99, max: wanted * 1.01 },
      stock: stockOf(stock, { watts: 5, volts: 500 }),
      mostParts: 2,
    }).found[0]!;

  test.each([
    [3000, "resistor", [1500, 6000], "series", [1500, 1500], "two 1,500 ohm 5 W in series make 3,000 ohm 10 W"],
    [3000, "resistor", [1500, 6000], "parallel", [6000, 6000], "two 6,000 ohm 5 W in parallel make 3,000 ohm 10 W"],
    [250e-12, "capacitor", [220e-12, 30e-12, 270e-12], "parallel", [30e-12, 220e-12], "250 pF from 220 and 30"],
  ] as const)("%d of a %s from %j in %s is %j: %s (common practice)", (...[wanted, kind, stock, only, values]) => {
    const { parts, off, shares } = made(wanted, kind, stock, only);
    expect(parts.map(({ value }) => value).sort((a, b) => a - b)).toEqual(values);
    expect(off).toBeCloseTo(0, 12);
    expect(shares.reduce((sum, { power }) => sum + power, 0)).toBeCloseTo(1, 12);
  });

  test("two equal parts carry twice the watts of one, so 10 W takes two of 5 W", () => {
    const base = { kind: "resistor", wanted: 3000, window: { min: 2970, max: 3030 }, watts: 10 } as const;
    const stock = stockOf([1500, 3000, 6000], { watts: 5 });
    expect(makeUp({ ...base, stock, mostParts: 1 }).found).toEqual([]);
    expect(makeUp({ ...base, stock }).found[0]!.parts).toHaveLength(2);
  });
});

test("long work can be watched: each step's best is no worse than the one before, and the last is the answer", () => {
  const wanted = 1000 * Math.E;
  const stock = stockOf(E6.flatMap((value) => [value, value * 10, value * 100]));
  const wants: Wants = { kind: "resistor", wanted, window: { min: 2690, max: 2750 }, stock, first: "nearest" };
  const offs: number[] = [];
  const steps = makingUp(wants);
  let step = steps.next();
  for (; !step.done; step = steps.next()) offs.push(Math.abs(step.value().found[0]?.off ?? 1));
  expect(offs.length).toBeGreaterThan(8);
  expect(offs).toEqual([...offs].sort((a, b) => b - a));
  expect(step.value).toEqual(makeUp(wants));
});

describe("where nothing does", () => {
  const E96 = Array.from({ length: 576 }, (_, i) => Number((10 * 10 ** (i / 96)).toPrecision(3)));
  const base = { kind: "resistor", wanted: 47_123.4, window: { min: 46_652, max: 47_594 } } as const;

  test.each([
    [{ stock: stockOf(E96, { watts: 0.25 }), watts: 5 }, "five watts from four quarter-watt parts"],
    [{ stock: stockOf(E96, { volts: 200 }), volts: 1000 }, "a thousand volts from four of 200 V"],
    [
      { stock: stockOf(E96, { watts: 0.5 }), watts: 2, window: { min: 47_100, max: 47_147 } },
      "two watts from four half-watt parts, which would all have to be equal",
    ],
    [{ stock: stockOf(E96, { price: 0.2 }), mostPrice: 0.1 }, "a price below the cheapest part"],
    [{ stock: stockOf(E96, {}), volts: 100 }, "parts of unknown ratings"],
    [{ stock: stockOf([]) }, "an empty drawer"],
    [{ stock: stockOf([0, -1, Number.NaN]) }, "values that no part has"],
  ] as const)("the answer is an honest none: %#", (...[more]) => {
    expect(makeUp({ ...base, ...more })).toEqual({ found: [], complete: true });
  });

  test("a drawer too large for four parts is refused with what would work", () => {
    const stock = stockOf(Array.from({ length: 2000 }, (_, i) => i + 1));
    expect(() => makeUp({ ...base, stock })).toThrow("Give at most 1200, or allow fewer parts.");
    expect(
      partsOf(makeUp({ ...base, stock, mostParts: 2, window: { min: 1, max: 1e9 } }).found[0]!.network),
    ).toHaveLength(1);
  });
});
