import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { partOf, rate } from "./partOf.js";

const R = (watts: number, value = 10e3) => partOf("carbon_comp", null, { value, watts });
const WIRE = partOf("wirewound", "heater_drop", { value: 100, watts: 10 });

describe("watts in hot air", () => {
  // Film and composition carry all of their watts to 70 °C and none at 155 °C (makers of metal film); wire from 25 to
  // 275 °C (MIL-R-39007). 60 V across 10 k burn 0.36 W: 0.72 W at half load.
  test.each([
    [70, 1, "up to the knee nothing changes"],
    [112.5, 2, "half of the way: half of the watts, 1.44 W"],
    [140, 5, "0.176 of the watts: 4.08 W"],
  ])("at %d °C half a watt that burns 0.36 W becomes %d W: %s", (celsius, watts, _why) => {
    expect(rate(R(0.5), { volts: 60, celsius }).aim?.pieces[0]?.watts).toBe(watts);
  });

  test("says how much a body carries there", () => {
    expect(rate(R(0.5), { volts: 60, celsius: 112.5 }).because[0]).toBe(
      "in air of 112.5 °C a body carries 50 % of its watts",
    );
  });

  test("an unknown loss is stepped up first and then given its air", () => {
    expect(rate(R(0.5), { celsius: 112.5 }).leastWatts).toBe(2);
  });

  test("air as hot as a body may ever get is refused with what would help", () => {
    expect(() => rate(R(0.5), { volts: 60, celsius: 155 })).toThrow(/155 °C.*move it/);
  });

  test("wire is not doubled for its air either", () => {
    expect(rate(WIRE, { amps: 0.25, celsius: 150 }).wantWatts).toBe(15);
  });

  test("warmer air never asks for fewer watts", () => {
    const celsius = fc.integer({ min: 20, max: 120 });
    fc.assert(
      fc.property(celsius, celsius, (a, b) => {
        const at = (degrees: number) => rate(R(0.5), { volts: 60, celsius: degrees }).leastWatts ?? 0;
        expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      }),
    );
  });
});

test("the peak of pulses burns nothing by itself; a peak that lasts does", () => {
  // 600 V over 2.2 k would burn 164 W if it stood there; as a pulse it says nothing of the average. Common practice.
  const stated = { value: 2200, watts: 1 };
  expect(rate(partOf("carbon_comp", "pulse", stated), { peakVolts: 600 }).figures?.lostWatts).toBeUndefined();
  expect(rate(partOf("carbon_comp", "plate_load", stated), { peakVolts: 40 }).figures?.lostWatts).toBeCloseTo(0.727, 3);
});
