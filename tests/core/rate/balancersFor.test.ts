import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { balancersFor, balancingOhmsFor, DEFAULTS_IN_FORCE } from "../../../src/core/index.js";

const { settings } = DEFAULTS_IN_FORCE;
const ohmsOf = (balancers: ReturnType<typeof balancersFor>) =>
  balancers.reduce((sum, { value }) => sum + (value ?? 0), 0);

describe("what balances two electrolytics in series", () => {
  test.each<[number, number, number, number, string, string]>([
    // farads, rated volts of each, volts across both, resistors, technology, why (worked by hand at 50 % load, 80 % of volts)
    [68e-6, 350, 520, 1, "metal_film", "350 V need a body for 437 V: 2 W of film bear 500 V"],
    [2.2e-6, 420, 667, 2, "metal_film", "420 V need a body for 525 V, which no film has: two share it"],
    [1000e-6, 450, 890, 1, "wirewound", "450 V on 33 k burn 6.1 W, twice that is above all film: 15 W of wire"],
  ])("%d F rated %d V at %d V: %d of %s, for %s", (farads, ratedVolts, volts, pieces, technology) => {
    const found = balancersFor({ farads, ratedVolts, volts }, settings);
    expect([found.length, found[0]?.technology]).toEqual([pieces, technology]);
  });

  test("never bear more of their watts and volts than the settings allow, and never exceed the ohms that balance", () => {
    const pair = fc.record({
      farads: fc.constantFrom(2.2e-6, 10e-6, 47e-6, 150e-6),
      ratedVolts: fc.constantFrom(250, 315, 350, 400, 450, 500),
    });
    fc.assert(
      fc.property(pair, fc.double({ min: 1, max: 2, noNaN: true }), ({ farads, ratedVolts }, times) => {
        const whole = { farads, ratedVolts, volts: ratedVolts * times };
        const found = balancersFor(whole, settings);
        expect(ohmsOf(found)).toBeLessThanOrEqual(balancingOhmsFor(whole) * (1 + 1e-9));
        for (const { value, watts, volts } of found) {
          const across = ratedVolts / found.length;
          expect(across ** 2 / value!).toBeLessThanOrEqual(watts! * Number(settings.res_load_max) * (1 + 1e-9));
          expect(across).toBeLessThanOrEqual((volts ?? Number.POSITIVE_INFINITY) * Number(settings.res_volt_max));
        }
      }),
    );
  });
});
