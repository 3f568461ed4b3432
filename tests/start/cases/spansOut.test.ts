import { expect, test } from "vitest";
import { DEFAULTS_IN_FORCE } from "../../../src/core/index.js";
import { decideCase } from "../../../src/start/cases/decideCase.js";

test("a reading in place is printed with its limits and with what is true at the least", () => {
  // 128 k less 2 % is 125.44 k; 20 % over 100 k is 120 k; the other end nobody knows.
  const one = {
    id: "1",
    cls: "carbon_comp",
    partsListLine: "R1 100K 20%",
    given: { reading: "128K", accPct: 2, inPlace: true },
  };
  const [reading] = decideCase(one, DEFAULTS_IN_FORCE).readings as readonly Record<string, number | string | null>[];
  expect(reading).toMatchObject({ verdict: "OUT", highestTrue: null, driftAtMost: null });
  expect(reading?.limitHigh).toBeCloseTo(120e3, 6);
  expect(reading?.lowestTrue).toBeCloseTo(125_440, 6);
  expect(reading?.driftAtLeast).toBeCloseTo(0.2544, 6);
});

test("the old and the new range are printed, and whether one lies in the other", () => {
  // .02 within 20 % ends at 0.024; 0.022 at 5 % reaches 0.0231.
  const one = { id: "2", cls: "paper_wax", partsListLine: "C1 .02 600V", given: { tolPct: 20 } };
  const answer = decideCase(one, DEFAULTS_IN_FORCE);
  const [min, max] = answer.newRange as readonly [number, number];
  expect(answer.oldRange).toEqual([0.016e-6, 0.024e-6].map((end) => expect.closeTo(end, 12)));
  expect(answer.contained).toBe(min >= 0.016e-6 && max <= 0.024e-6);
  expect(max / Number(answer.value)).toBeCloseTo(1.05, 6);
});
