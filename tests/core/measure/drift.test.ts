import fc from "fast-check";
import { expect, test } from "vitest";
import { drift, driftSummary, driftText } from "../../../src/core/index.js";

test.each([
  [470_000, 612_000, 0.30213],
  [4_700, 4_700, 0],
  [100, 80, -0.2],
])("%d that reads %d has drifted by %d", (nominal, reading, ratio) => {
  expect(drift({ nominal, reading })).toBeCloseTo(ratio, 5);
});

test("a nominal value of nothing is refused", () => {
  expect(() => drift({ nominal: 0, reading: 5 })).toThrow("A nominal value lies above zero.");
});

test("many parts together: how many, the middle one, how many beyond their limit", () => {
  const parts = [100, 105, 110, 130].map((reading) => ({ nominal: 100, reading, limit: 0.1 }));
  const summary = driftSummary(parts)!;
  expect(summary.count).toBe(4);
  expect(summary.median).toBeCloseTo(0.075, 12);
  expect(summary.beyond).toBe(1);
  expect(driftSummary([])).toBeNull();
});

test("order does not matter", () => {
  const readings = fc.array(fc.double({ min: 50, max: 200, noNaN: true }), { minLength: 1 });
  fc.assert(
    fc.property(readings, (each) => {
      const parts = each.map((reading) => ({ nominal: 100, reading, limit: 0.2 }));
      expect(driftSummary([...parts].reverse())).toEqual(driftSummary(parts));
    }),
  );
});

test.each([
  [0.3021, "+30 %", "two figures"],
  [-0.045, "−4.5 %", "a minus as it is printed"],
  [0, "0 %", "no sign for nothing"],
  [3091, "3100 times", "no percentage that one can picture"],
])("a drift of %d is told as %s: %s", (ratio, text) => expect(driftText(ratio)).toBe(text));
