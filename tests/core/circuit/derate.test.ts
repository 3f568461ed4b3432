import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { derate, readDerating } from "../../../src/core/index.js";

const WATTS = [0.125, 0.25, 0.5, 1, 2, 3, 5, 7, 10];

describe("the rating to buy", () => {
  test.each([
    // amount, derating, share left by heat, rung, why
    [0.5, "1 step", 1, 1, "an old half-watt part, dissipation not known (common practice)"],
    [2, "1 step", 1, 3, "4 W is not commonly made (common practice)"],
    [0.4, "50%", 1, 1, "0.8 W is needed"],
    [0.4, "0.5", 1, 1, "the same as a ratio"],
    [0.35, "NAVSEA SD-18", 1, 1, "0.636 W is needed at 0.55"],
    [0.4, "50%", 0.5, 2, "at half power by heat 1.6 W is needed"],
    [0.5, "0 steps", 0.9, 1, "half a watt where it is too warm for it"],
  ])("%d W, %s, %d left by heat: %d W, %s", (amount, text, heatShare, rung) => {
    const derating = readDerating(text, "film resistor", "watts");
    expect(derate({ amount, derating, heatShare }, WATTS).rung).toBe(rung);
  });

  test("what is used of the rung is never more than the share", () => {
    const share = fc.double({ min: 0.2, max: 1, noNaN: true });
    const heat = fc.double({ min: 0.5, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.9, noNaN: true }), share, heat, (amount, part, heatShare) => {
        const { rung } = derate({ amount, derating: { share: part }, heatShare }, WATTS);
        expect(amount).toBeLessThanOrEqual(rung * part * heatShare * (1 + 1e-6));
      }),
    );
  });

  test("surroundings as hot as the part may get leave nothing to buy", () => {
    expect(() => derate({ amount: 1, derating: { steps: 0 }, heatShare: 0 }, WATTS)).toThrow("as hot as the part");
  });

  test.each(["", "a lot", "-5", "1.5 steps"])('"%s" is no derating, with what would work', (text) => {
    expect(() => readDerating(text, "resistor", "watts")).toThrow("Write it like 1 step");
  });

  test("a policy that says nothing on the part names those it speaks of", () => {
    expect(() => readDerating("half load", "film", "watts")).toThrow("It speaks of resistor.");
  });
});
