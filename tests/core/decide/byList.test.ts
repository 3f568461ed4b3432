import { describe, expect, test } from "vitest";
import { decide, type ListedPart, type Part, type Reading } from "../../../src/core/index.js";
import { partOf, ruled } from "../rate/partOf.js";

const resistor = (stated: Partial<ListedPart>) => partOf("carbon_comp", null, stated);
const lifted = (value: number): Reading => ({ quantity: "resistance", value, inPlace: false, accuracy: 0.01 });

function decided(part: Part, readings: readonly Reading[] = []) {
  const { rule, settings } = ruled(part);
  return decide(part, rule, settings, { readings });
}

describe("what a list settles by itself, before any rule", () => {
  // Common practice: an empty place stays empty, and a part inside another comes and goes with that.
  test.each<[string, Part, string, RegExp]>([
    ["not fitted", resistor({ valueState: "not-fitted" }), "keep", /none is fitted/],
    ["not fitted, with a value", resistor({ valueState: "not-fitted", value: 47e3 }), "keep", /none is fitted/],
    ["inside another", resistor({ partOf: "T3" }), "check", /part of T3/],
    ["paper inside another", partOf("paper_wax", null, { partOf: "T3" }), "check", /part of T3/],
  ])("%s", (_why, part, action, leads) => {
    expect(decided(part)).toMatchObject({ action, leads: expect.stringMatching(leads) });
  });

  test("a part inside another with a value of its own is judged as any other", () => {
    expect(decided(resistor({ partOf: "T3", value: 47e3 }), [lifted(80e3)]).action).toBe("replace");
  });
});

describe("a value that nobody knows", () => {
  test("is asked for, whatever is read: there is nothing to hold a reading against", () => {
    expect(decided(resistor({})).action).toBe("ask");
    expect(decided(resistor({}), [lifted(80e3)]).action).toBe("ask");
  });

  test("does not save a part that goes on sight (common practice: old wax paper)", () => {
    expect(decided(partOf("paper_wax", null, {})).action).toBe("replace");
  });

  test("is not needed where the part is had as it was, or its value is worked out", () => {
    expect(decided(partOf("air_variable", null, {})).action).toBe("keep");
    expect(decided(partOf("ballast", null, {})).action).toBe("test");
  });

  test("is measured where it was chosen when the set was tested", () => {
    expect(decided(resistor({ valueState: "selected-in-test" })).leads).toMatch(/measure the old one lifted/);
  });
});
