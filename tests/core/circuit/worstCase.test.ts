import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  close,
  type Network,
  networkValue,
  type TolerantPart,
  withValues,
  worstCase,
} from "../../../src/core/index.js";

const part = (value: number, percent: number) => ({
  part: { value, tolerance: { minus: percent / 100, plus: percent / 100 } },
});

describe("how far a network may lie from its value", () => {
  test("two of 5 % in series are 5 % at worst: not halved, not doubled", () => {
    const { nominal, worst, likely } = worstCase({ series: [part(100e3, 5), part(100e3, 5)] }, "resistor");
    expect(nominal).toBe(200e3);
    expect(worst.min).toBeCloseTo(190e3, 6);
    expect(worst.max).toBeCloseTo(210e3, 6);
    expect(likely.max / nominal - 1).toBeCloseTo(0.05 / Math.SQRT2, 9); // sqrt(2 x 0.025^2)
  });

  test("a small part in series hardly matters, in parallel it rules", () => {
    const inSeries = worstCase({ series: [part(100e3, 1), part(1e3, 20)] }, "resistor");
    const inParallel = worstCase({ parallel: [part(100e3, 1), part(1e3, 20)] }, "resistor");
    expect(inSeries.worst.max / inSeries.nominal - 1).toBeLessThan(0.012);
    expect(inParallel.worst.max / inParallel.nominal - 1).toBeGreaterThan(0.19);
  });

  const leaf = fc
    .record({ value: fc.double({ min: 1, max: 1e6, noNaN: true }), percent: fc.integer({ min: 0, max: 20 }) })
    .map(({ value, percent }): Network<TolerantPart> => part(value, percent));
  const { network } = fc.letrec<{ network: Network<TolerantPart> }>((tie) => ({
    network: fc.oneof(
      { depthSize: "small", withCrossShrink: true },
      leaf,
      fc.array(tie("network"), { minLength: 2, maxLength: 3 }).map((series) => ({ series })),
      fc.array(tie("network"), { minLength: 2, maxLength: 3 }).map((parallel) => ({ parallel })),
    ),
  }));
  const kind = fc.constantFrom("resistor" as const, "capacitor" as const);

  test("the likely span holds the nominal, the worst span holds the likely one to first order", () => {
    fc.assert(
      fc.property(network, kind, (each, of) => {
        const { nominal, worst, likely } = worstCase(each, of);
        expect(close(nominal, networkValue(withValues(each), of))).toBe(true);
        expect(likely.min).toBeLessThanOrEqual(nominal);
        expect(likely.max).toBeGreaterThanOrEqual(nominal);
        expect(worst.max).toBeGreaterThanOrEqual(nominal);
        expect(likely.max - nominal).toBeLessThanOrEqual((worst.max - nominal) * 1.25 + nominal * 1e-9);
      }),
    );
  });

  test("no part of a network is looser than its loosest part", () => {
    fc.assert(
      fc.property(network, kind, (each, of) => {
        const { nominal, worst } = worstCase(each, of);
        expect(worst.max).toBeLessThanOrEqual(nominal * 1.2 * (1 + 1e-9));
        expect(worst.min).toBeGreaterThanOrEqual(nominal * 0.8 * (1 - 1e-9));
      }),
    );
  });
});
