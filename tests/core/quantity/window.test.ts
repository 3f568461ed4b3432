import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { containment, readTolerance, windowOf } from "../../../src/core/index.js";

describe("the window of a value", () => {
  test("10 k at 10 % spans 9 k to 11 k (common practice)", () => {
    const { min, max } = windowOf(10_000, readTolerance("10 %"));
    expect(min).toBeCloseTo(9_000, 9);
    expect(max).toBeCloseTo(11_000, 9);
  });

  test("a lopsided tolerance gives a lopsided window: 20 µF -10/+50 % is 18 to 30 µF", () => {
    const { min, max } = windowOf(20e-6, readTolerance("-10/+50 %"));
    expect(min).toBeCloseTo(18e-6, 12);
    expect(max).toBeCloseTo(30e-6, 12);
  });
});

describe("one window in another", () => {
  test.each([
    // old, old tolerance, new, new tolerance, inside, below, above
    [50_000, "20 %", 47_000, "5 %", true, 0, 0],
    [50_000, "20 %", 51_000, "5 %", true, 0, 0],
    [0.05e-6, "20 %", 0.047e-6, "20 %", false, 0.06, 0], // 0.0376 against 0.04
    [0.05e-6, "20 %", 0.047e-6, "10 %", true, 0, 0],
    [20e-6, "-10/+50 %", 22e-6, "20 %", false, 1 - 17.6 / 18, 0],
    [0.02e-6, "20 %", 0.022e-6, "10 %", false, 0, 0.0242 / 0.024 - 1],
    [10_000, "10 %", 10_000, "10 %", true, 0, 0],
  ])("%d %s holds %d %s: %s", (old, oldTolerance, now, nowTolerance, inside, below, above) => {
    const found = containment(windowOf(now, readTolerance(nowTolerance)), windowOf(old, readTolerance(oldTolerance)));
    expect(found.inside).toBe(inside);
    expect(found.below).toBeCloseTo(below, 9);
    expect(found.above).toBeCloseTo(above, 9);
  });

  test("a window lies in itself, and scaling both changes nothing", () => {
    const edge = fc.double({ min: 1e-12, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(edge, edge, edge, edge, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (a, b, c, d, factor) => {
        const inner = { min: Math.min(a, b), max: Math.max(a, b) };
        const outer = { min: Math.min(c, d), max: Math.max(c, d) };
        const scaled = (span: typeof inner) => ({ min: span.min * factor, max: span.max * factor });
        expect(containment(inner, inner).inside).toBe(true);
        expect(containment(scaled(inner), scaled(outer)).inside).toBe(containment(inner, outer).inside);
      }),
    );
  });
});
