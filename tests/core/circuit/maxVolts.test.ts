import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { close, criticalOhms, maxVolts } from "../../../src/core/index.js";

describe("the volts a resistor may bear", () => {
  test.each<[number, number, number | null, number, string]>([
    // ohms, watts, body, volts, why
    [100, 0.25, 250, 5, "watts decide: sqrt(0.25 x 100)"],
    [1_000_000, 0.5, 350, 350, "the body decides: watts alone would allow 707 V"],
    [245_000, 0.5, 350, 350, "the critical resistance: both say the same"],
    [1_000_000, 0.5, null, 707.1067811865476, "no body limit known"],
  ])("%d ohms %d W (body %s V): %d V, %s", (ohms, watts, bodyVolts, volts) => {
    expect(maxVolts({ ohms, watts, bodyVolts })).toBeCloseTo(volts, 9);
  });

  test("below the critical resistance more ohms bear more volts, above it none", () => {
    const positive = fc.double({ min: 1e-2, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(
        positive,
        fc.constantFrom(0.25, 0.5, 1, 2),
        fc.constantFrom(250, 350, 500),
        (ohms, watts, bodyVolts) => {
          const limit = maxVolts({ ohms, watts, bodyVolts });
          expect(limit).toBeLessThanOrEqual(bodyVolts);
          if (ohms > criticalOhms({ watts, bodyVolts })) expect(limit).toBe(bodyVolts);
          else expect(close(limit ** 2 / ohms, watts)).toBe(true);
        },
      ),
    );
  });
});
