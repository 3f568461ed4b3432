import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FORMS, JOINS, networkFrom } from "../../../src/core/compose/forms.js";
import { type Network, networkValue, partsOf } from "../../../src/core/compose/network.js";
import { sharesOf } from "../../../src/core/compose/shares.js";

const series = (...parts: number[]): Network => ({ series: parts.map((part) => ({ part })) });
const parallel = (...parts: number[]): Network => ({ parallel: parts.map((part) => ({ part })) });
const u = 1e-6;

describe("what a network comes to, after published examples", () => {
  test.each([
    ["capacitor", series(1 * u, 5 * u, 8 * u), 0.755 * u, "OpenStax College Physics, capacitors in series, m42336"],
    ["capacitor", parallel(1 * u, 5 * u, 8 * u), 14 * u, "OpenStax College Physics, capacitors in parallel, m42336"],
    ["capacitor", { parallel: [series(1 * u, 5 * u), { part: 8 * u }] }, 8.833 * u, "OpenStax College Physics, m42336"],
    ["capacitor", series(5 * u, 8 * u), 3.08 * u, "OpenStax College Physics, m42336 exercises"],
    ["capacitor", parallel(5 * u, 8 * u), 13 * u, "OpenStax College Physics, m42336 exercises"],
    ["capacitor", { series: [{ part: 12 * u }, parallel(2 * u, 4 * u)] }, 4 * u, "OpenStax University Physics, m58449"],
    ["resistor", series(1, 6, 13), 20, "OpenStax College Physics, resistors in series, m42356"],
    ["resistor", parallel(1, 6, 13), 0.804, "OpenStax College Physics, resistors in parallel, m42356"],
    ["resistor", series(36, 50, 700), 786, "OpenStax College Physics, m42356 exercise: the largest"],
    ["resistor", parallel(36, 50, 700), 20.3, "OpenStax College Physics, m42356 exercise: the smallest"],
    ["resistor", series(3e3, 10e3, 5e3), 18e3, "Lessons in Electric Circuits I, series and parallel"],
    ["resistor", parallel(10e3, 2e3, 1e3), 625, "Lessons in Electric Circuits I, series and parallel"],
  ] as const)("a %s network %j comes to %d: %s", (...[kind, network, value]) => {
    const found = networkValue(network as Network, kind);
    expect(Math.abs(found / value - 1)).toBeLessThan(2e-3);
  });
});

describe("what each part bears, after published examples", () => {
  const volts = (network: Network, kind: "resistor" | "capacitor", across: number) =>
    sharesOf(network, kind).map((share) => share.volts * across);

  test.each([
    ["resistor", series(1, 6, 13), 12, [0.6, 3.6, 7.8], "OpenStax College Physics, m42356: drops"],
    ["resistor", series(3e3, 10e3, 5e3), 9, [1.5, 5, 2.5], "Lessons in Electric Circuits I, divider"],
    ["capacitor", { series: [{ part: 12 * u }, parallel(2 * u, 4 * u)] }, 12, [4, 8, 8], "University Physics, m58449"],
    ["capacitor", series(8 * u, 16 * u), 450, [300, 150], "worked: the smaller capacitor takes the larger share"],
    [
      "resistor",
      { series: [parallel(100, 250), parallel(350, 200)] },
      24,
      [8.627, 8.627, 15.37, 15.37],
      "Lessons in Electric Circuits I, series-parallel, SPICE listing",
    ],
  ] as const)("a %s network %j across %d V has %j V: %s", (...[kind, network, across, drops]) => {
    const found = volts(network as Network, kind, across);
    for (const [i, drop] of drops.entries()) expect(found[i]).toBeCloseTo(drop, 2);
  });

  test("powers of 1, 6 and 13 ohms in series on 12 V are 0.360, 2.16 and 4.68 W (College Physics, m42356)", () => {
    const powers = sharesOf(series(1, 6, 13), "resistor").map(({ power }) => power * (12 ** 2 / 20));
    expect(powers.map((power) => Number(power.toFixed(3)))).toEqual([0.36, 2.16, 4.68]);
  });

  test("powers of 1, 6 and 13 ohms in parallel on 12 V are 144, 24.0 and 11.1 W (College Physics, m42356)", () => {
    const network = parallel(1, 6, 13);
    const whole = 12 ** 2 / networkValue(network, "resistor");
    const powers = sharesOf(network, "resistor").map(({ power }) => power * whole);
    expect(powers.map((power) => Number(power.toPrecision(3)))).toEqual([144, 24, 11.1]);
  });
});

describe("laws of networks", () => {
  const value = fc.double({ min: 1e-12, max: 1e7, noNaN: true });
  const any: fc.Arbitrary<Network> = fc
    .tuple(fc.constantFrom(...Object.values(FORMS)), fc.constantFrom(...JOINS), fc.array(value, { minLength: 4 }))
    .map(([form, outer, values]) => networkFrom(form, outer, values));

  test("powers of the parts add up to that of the whole (Tellegen)", () => {
    fc.assert(
      fc.property(any, fc.constantFrom("resistor" as const, "capacitor" as const), (network, kind) => {
        const sum = sharesOf(network, kind).reduce((total, { power }) => total + power, 0);
        expect(sum).toBeCloseTo(1, 9);
      }),
    );
  });

  test("twice every value is twice the whole, and the shares stay", () => {
    fc.assert(
      fc.property(any, (network) => {
        const twice = JSON.parse(JSON.stringify(network), (key, part) => (key === "part" ? part * 2 : part)) as Network;
        expect(networkValue(twice, "resistor") / networkValue(network, "resistor")).toBeCloseTo(2, 9);
        sharesOf(twice, "resistor").forEach((share, i) => {
          expect(share.power).toBeCloseTo(sharesOf(network, "resistor")[i]!.power, 9);
        });
      }),
    );
  });

  test("the nine forms of one to four parts with their joins exchanged are 16 networks and the single part", () => {
    const networks = Object.values(FORMS).flatMap((form) =>
      JOINS.map((outer) => JSON.stringify(networkFrom(form, outer, [1, 2, 3, 4]))),
    );
    expect(new Set(networks).size).toBe(17);
    expect(partsOf(networkFrom(FORMS["((a+b)|c)+d"], "series", [1, 2, 3, 4]))).toEqual([1, 2, 3, 4]);
  });
});
