import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { close, dcStringShare, stringShare } from "../../../src/core/index.js";

const values = fc.array(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), { minLength: 1, maxLength: 6 });
const sum = (numbers: readonly number[]) => numbers.reduce((total, each) => total + each, 0);

describe("capacitors in series", () => {
  test("at first the smaller one takes more: 8 + 16 µF across 450 V stand at 300 and 150", () => {
    const [small, large] = stringShare([8e-6, 16e-6], 450);
    expect(small).toBeCloseTo(300, 9);
    expect(large).toBeCloseTo(150, 9);
  });

  test("at dc the better insulation takes more, whatever the farads", () => {
    expect(dcStringShare([2e6, 1e6], 450)).toEqual([300, 150]);
  });

  test("equal balancing resistors pull unequal leakage together", () => {
    const [bad, good] = dcStringShare([2e6, 20e6], 450, 100_000);
    expect(good! - bad!).toBeLessThan(12);
    expect(good! - bad!).toBeGreaterThan(0);
  });

  test("the shares together are the whole, and order does not matter", () => {
    fc.assert(
      fc.property(values, (each) => {
        for (const share of [stringShare, dcStringShare]) {
          const volts = share(each, 450);
          expect(close(sum(volts), 450)).toBe(true);
          const turned = [...share([...each].reverse(), 450)].reverse();
          turned.forEach((volt, index) => {
            expect(close(volt, volts[index]!)).toBe(true);
          });
        }
      }),
    );
  });

  test("nothing, and values that are not positive, are refused", () => {
    expect(() => stringShare([], 450)).toThrow("Give one positive value for each capacitor.");
    expect(() => dcStringShare([1e6, 0], 450)).toThrow("Give one positive value for each capacitor.");
  });
});
