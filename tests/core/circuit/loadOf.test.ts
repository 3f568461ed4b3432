import fc from "fast-check";
import { expect, test } from "vitest";
import { close, loadOf } from "../../../src/core/index.js";

test("220 k of half a watt across 250 V works at 57 % of its watts and 71 % of its volts", () => {
  const load = loadOf({ ohms: 220_000, watts: 0.5, bodyVolts: 350 }, { volts: 250 });
  expect(load.watts).toBeCloseTo(62_500 / 220_000, 12);
  expect(load.ofWatts).toBeCloseTo(0.568182, 6); // 0.284091 / 0.5
  expect(load.ofVolts).toBeCloseTo(0.714286, 6); // 250 / 350
});

test("10 mA through 100 ohms is 10 mW", () => {
  expect(loadOf({ ohms: 100, watts: 0.25 }, { amperes: 0.01 })).toEqual({
    watts: 0.01,
    volts: 1,
    ofWatts: 0.04,
    ofVolts: null,
  });
});

test.each([[{}], [{ volts: 1, amperes: 1 }]])("%j is refused: one of the two is needed", (stress) => {
  expect(() => loadOf({ ohms: 1, watts: 1 }, stress)).toThrow("Give the volts across the part or the amperes");
});

test("volts and the amperes they drive give the same load", () => {
  const positive = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(positive, positive, (ohms, volts) => {
      const byVolts = loadOf({ ohms, watts: 1 }, { volts });
      const byAmperes = loadOf({ ohms, watts: 1 }, { amperes: volts / ohms });
      expect(close(byVolts.ofWatts, byAmperes.ofWatts)).toBe(true);
    }),
  );
});
