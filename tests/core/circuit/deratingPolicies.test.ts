import { expect, test } from "vitest";
import { DERATING_POLICIES, deratingShare } from "../../../src/core/index.js";

test("every row is a share of a rating, says where it comes from, and stands once", () => {
  for (const row of DERATING_POLICIES) {
    expect(row.share).toBeGreaterThan(0);
    expect(row.share).toBeLessThanOrEqual(1);
    expect(row.source).not.toBe("");
  }
  const keys = DERATING_POLICIES.map((row) => `${row.policy}|${row.of}|${row.part}`);
  expect(new Set(keys).size).toBe(keys.length);
});

test("no policy claims that anything complies with it", () => {
  expect(JSON.stringify(DERATING_POLICIES)).not.toMatch(/compl/i);
});

test("a policy's row is found however it is written", () => {
  expect(deratingShare({ policy: "navsea sd-18", part: "Film", of: "volts" }).share).toBe(0.55);
});

test("the user's own policy serves as well", () => {
  const heat = { kneeCelsius: 40, zeroCelsius: null };
  const own = [{ policy: "mine", part: "resistor", of: "watts" as const, share: 0.4, ...heat, source: "me" }];
  expect(deratingShare({ policy: "mine", part: "resistor", of: "watts" }, own).share).toBe(0.4);
});

test.each([
  [{ policy: "none such", part: "film", of: "volts" as const }, "The policies are half load"],
  [{ policy: "half load", part: "film", of: "watts" as const }, "It speaks of resistor."],
  [{ policy: "half load", part: "resistor", of: "volts" as const }, "It says nothing on volts."],
])("%j is refused with what there is", (asked, text) => expect(() => deratingShare(asked)).toThrow(text));
