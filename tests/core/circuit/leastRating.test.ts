import fc from "fast-check";
import { expect, test } from "vitest";
import { close, leastRating, peakStress } from "../../../src/core/index.js";

test("using all of a rating needs no more than the stress, half of it needs twice", () => {
  expect(leastRating({ stress: 350, share: 1 })).toBe(350);
  expect(leastRating({ stress: 0.5, share: 0.5 })).toBe(1);
});

test.each([0, -0.5, 1.2, Number.NaN])("a share of %d is refused", (share) => {
  expect(() => leastRating({ stress: 1, share })).toThrow("above 0 and up to 1");
});

test("the share of the least rating is the stress again", () => {
  const share = fc.double({ min: 0.01, max: 1, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), share, (stress, part) => {
      expect(close(leastRating({ stress, share: part }) * part, stress)).toBe(true);
    }),
  );
});

test("alternating volts count with their peak", () => {
  expect(peakStress({ dcVolts: 300, acVolts: 10 })).toBeCloseTo(314.142, 3); // 300 + 1.41421 x 10
});
