import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { newVolts } from "../../../src/core/index.js";

const ELECTROLYTIC = [160, 200, 250, 315, 350, 400, 450, 500];
const FILM = [100, 160, 250, 400, 630, 1000, 1600];

describe("the volts to buy for a capacitor", () => {
  test.each<[Parameters<typeof newVolts>[0], readonly number[], number, string]>([
    // needs, ladder, volts, why
    [{ oldVolts: 150 }, ELECTROLYTIC, 160, "the first rating that is not below the old one"],
    [{ oldVolts: 600 }, FILM, 630, "600 V is made as 630"],
    [{ oldVolts: 200, floorVolts: 630 }, FILM, 630, "shops that stock one voltage"],
    [{ steadyVolts: 350, share: 0.9 }, ELECTROLYTIC, 400, "350 / 0.9 is 389"],
    [{ steadyVolts: 350, share: 0.9, peakVolts: 465 }, ELECTROLYTIC, 500, "the warm-up peak counts"],
    [{ oldVolts: 400, steadyVolts: 100 }, FILM, 400, "the old rating is never undercut"],
  ])("%j needs %j: %d V, %s", (needs, ladder, volts) => expect(newVolts(needs, ladder)).toBe(volts));

  test("525 V at warm-up is more than any electrolytic is made for, and that is said", () => {
    expect(() => newVolts({ peakVolts: 525 }, ELECTROLYTIC)).toThrow("The largest rating that is made is 500.");
  });

  test("without any volts nothing can be said", () => {
    expect(() => newVolts({}, FILM)).toThrow("Give the old rating");
  });

  test("it bears everything asked of it", () => {
    const volts = fc.integer({ min: 1, max: 440 });
    fc.assert(
      fc.property(volts, volts, volts, (oldVolts, steadyVolts, peakVolts) => {
        const found = newVolts({ oldVolts, steadyVolts, peakVolts, share: 0.9 }, ELECTROLYTIC);
        expect(found).toBeGreaterThanOrEqual(Math.max(oldVolts, steadyVolts / 0.9, peakVolts));
      }),
    );
  });
});
