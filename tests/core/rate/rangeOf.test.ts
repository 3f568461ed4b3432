import { describe, expect, test } from "vitest";
import { valueOfAim } from "../../../src/core/index.js";
import { rangeOf, rangeSaid } from "../../../src/core/rate/rangeOf.js";
import type { Aim } from "../../../src/core/ratings.js";

const piece = (value: number, ratio: number, kind?: "resistor") => ({
  value,
  tolerance: { minus: ratio, plus: ratio },
  watts: null,
  volts: null,
  technology: "same",
  ...(kind ? { kind } : {}),
});
const PAIR: Aim = { pieces: [piece(220e-12, 0.05), piece(30e-12, 0.02)], text: "220 pF || 30 pF" };
const BALANCED: Aim = {
  pieces: [piece(100e-6, 0.2), piece(100e-6, 0.2), piece(220e3, 0.5, "resistor")],
  text: "100 µF + 100 µF",
};

describe("what a new part may really be, against the old one", () => {
  test("a made-up value spans as much as the widest of its pieces", () => {
    // 220 + 30 pF in parallel add to 250 pF; 5 % of it either way.
    expect(valueOfAim(PAIR, "capacitor")).toBeCloseTo(250e-12, 15);
    expect(rangeOf(PAIR, "capacitor")?.min).toBeCloseTo(237.5e-12, 15);
    expect(rangeOf(PAIR, "capacitor")?.max).toBeCloseTo(262.5e-12, 15);
  });

  test("resistors that only balance a pair do not widen it", () => {
    // Two equal ones in series are half of one: 50 µF and 20 %.
    expect(rangeOf(BALANCED, "capacitor")?.max).toBeCloseTo(60e-6, 10);
  });

  test("within the old range it says so, beyond it by how much", () => {
    // The domain's own pair of figures: .02 as .022 at 10 % reaches 0.0242 where 20 % ended at 0.024, 0.83 % over.
    const old = { min: 0.016e-6, max: 0.024e-6 };
    expect(rangeSaid({ min: 0.0198e-6, max: 0.0242e-6 }, old, "capacitor")).toBe(
      "its range leaves the old one (0.016 µF to 0.024 µF) by 0.83 %",
    );
    expect(rangeSaid({ min: 0.0209e-6, max: 0.0231e-6 }, old, "capacitor")).toBe(
      "0.0209 µF to 0.0231 µF lies within 0.016 µF to 0.024 µF",
    );
  });
});
