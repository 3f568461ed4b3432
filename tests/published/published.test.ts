import { describe, expect, test } from "vitest";
import { CIRCUITS } from "./circuits.js";
import { MARKS } from "./codes.js";
import { COLOUR_CODES } from "./colours.js";
import { DOTS } from "./dots.js";
import { PREFERRED } from "./preferred.js";
import { RATINGS } from "./ratings.js";
import { SAFETY } from "./safety.js";
import type { Check } from "./table.js";
import { TEMPERATURE_CODES } from "./temperature.js";
import { TRADE } from "./trade.js";

const TABLES: Readonly<Record<string, readonly Check[]>> = {
  "preferred numbers": PREFERRED,
  colours: COLOUR_CODES,
  dots: DOTS,
  "marks and letters": MARKS,
  "temperature codes": TEMPERATURE_CODES,
  "ratings and derating": RATINGS,
  "safety and charge": SAFETY,
  circuits: CIRCUITS,
  "facts of the trade": TRADE,
};
const ALL = Object.values(TABLES).flat();

/** The same figure, as far as the source's rounding goes; lists are compared figure by figure. */
function expectSame(found: unknown, value: unknown, within: number): void {
  if (Array.isArray(value)) {
    expect(found).toHaveLength(value.length);
    value.forEach((each, index) => {
      expectSame((found as unknown[])[index], each, within);
    });
  } else if (typeof value === "number" && value !== 0) {
    expect(typeof found).toBe("number");
    expect(Math.abs((found as number) / value - 1), `${found} against ${value}`).toBeLessThanOrEqual(within);
  } else {
    expect(found).toBe(value);
  }
}

describe.each(Object.entries(TABLES))("published: %s", (_name, checks) => {
  test.each(checks.map((check) => [check.of, check.given, check.value, check.source, check] as const))(
    "%s: %s gives %j (%s)",
    (_of, _given, value, _source, check) => expectSame(check.found(), value, check.within),
  );
});

describe("the published checks themselves", () => {
  const counted = (status: Check["status"]) => ALL.filter((check) => check.status === status).length;

  test("there are more than 300 read in a source, not counting those worked out or recalled", () => {
    expect(counted("seen")).toBeGreaterThan(300);
    expect(ALL.length).toBeGreaterThan(600);
  });

  test("they come from more than a dozen distinct sources", () => {
    const sources = new Set(
      ALL.filter(({ status }) => status === "seen").map(({ source }) => source.split(/[;,(]/)[0]!.trim()),
    );
    expect(sources.size).toBeGreaterThan(30);
  });

  test("each has its source beside it", () => {
    expect(ALL.filter((check) => check.source === "" || check.of === "")).toEqual([]);
  });

  test("none is wider than its source's rounding explains: 2 % at most", () => {
    expect(ALL.filter((check) => check.within > 0.02)).toEqual([]);
  });
});
