import { describe, expect, test } from "vitest";
import { SERIES, SERIES_NAMES, seriesNamed } from "../../../src/core/index.js";

const E_COUNTS = { E3: 3, E6: 6, E12: 12, E24: 24, E48: 48, E96: 96, E192: 192, R5: 5, R10: 10, R20: 20, R40: 40 };

/** The step that rounding a power of ten would give, in three figures. */
const rounded = (place: number, count: number, figures: 1 | 2) => {
  const exact = 10 ** (place / count);
  return Math.round(exact * 10 ** figures) * 10 ** (2 - figures);
};

describe("the preferred series", () => {
  test.each(Object.entries(E_COUNTS))("%s has %d steps a decade, rising, 100 first", (name, count) => {
    const { steps } = SERIES[name as keyof typeof SERIES];
    expect(steps).toHaveLength(count);
    expect(steps[0]).toBe(100);
    expect([...steps].sort((a, b) => a - b)).toEqual(steps);
    expect(new Set(steps).size).toBe(count);
  });

  test.each([
    ["E3", "E6"],
    ["E6", "E12"],
    ["E12", "E24"],
    ["E48", "E96"],
    ["E96", "E192"],
    ["R5", "R10"],
    ["R10", "R20"],
    ["R20", "R40"],
  ] as const)("every value of %s is one of %s", (small, large) => {
    expect(SERIES[large].steps).toEqual(expect.arrayContaining([...SERIES[small].steps]));
  });

  test("E48 and E96 are the rounded powers of ten throughout", () => {
    for (const [series, count] of [
      [SERIES.E48, 48],
      [SERIES.E96, 96],
    ] as const) {
      expect(series.steps).toEqual(series.steps.map((_, place) => rounded(place, count, 2)));
    }
  });

  test("E192 departs from the rounded powers at 9.20 alone", () => {
    const departures = SERIES.E192.steps.filter((step, place) => step !== rounded(place, 192, 2));
    expect(departures).toEqual([920]);
  });

  test("E24 departs at 2.7 to 4.7 and 8.2", () => {
    const departures = SERIES.E24.steps.filter((step, place) => step !== rounded(place, 24, 1));
    expect(departures).toEqual([270, 300, 330, 360, 390, 430, 470, 820]);
  });

  test("a series is found however its name is written", () => {
    for (const name of SERIES_NAMES) expect(seriesNamed(` ${name.toLowerCase()} `)).toBe(SERIES[name]);
    expect(seriesNamed("e 24")).toBe(SERIES.E24);
  });

  test("a name that no standard knows is refused with the list of those that are", () => {
    expect(() => seriesNamed("E25")).toThrow('"E25" is not known. A series is one of E3, E6');
  });
});
