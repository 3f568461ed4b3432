import { describe, expect, test } from "vitest";
import { type FigureName, placeSaid, type Stated, testSaid } from "../../../src/core/index.js";

const stating =
  (figures: Partial<Record<FigureName, number>>): Stated =>
  (name) =>
    figures[name] ?? null;

describe("the place that stated figures describe", () => {
  test("volts told of both ends of a resistor leave their difference across it", () => {
    expect(placeSaid("resistor", stating({}), [260, 100]).volts).toBe(160);
  });

  test("volts across it outrank those of an end", () => {
    expect(placeSaid("resistor", stating({ volts: 40 }), [260]).volts).toBe(40);
  });

  test("the worst volts of a resistor are what it is rated for; of a capacitor they are a peak", () => {
    expect(placeSaid("resistor", stating({ peakVolts: 250 }), [])).toMatchObject({ volts: 250, peakVolts: null });
    expect(placeSaid("capacitor", stating({ peakVolts: 250 }), [])).toMatchObject({ volts: null, peakVolts: 250 });
  });

  test("a pulse stands on a capacitor's steady volts", () => {
    expect(placeSaid("capacitor", stating({ volts: 400, pulseVolts: 900 }), []).peakVolts).toBe(1300);
    expect(placeSaid("resistor", stating({ volts: 400, pulseVolts: 900 }), []).peakVolts).toBe(900);
  });
});

test("a bench test of a class that has none says nothing", () => {
  expect(testSaid("neon", stating({ strikeVolts: 112 }))[0]?.bad).toBe(true);
  expect(testSaid("carbon_comp", stating({ strikeVolts: 112 }))).toEqual([]);
});
