import { describe, expect, test } from "vitest";
import {
  fact,
  type ListedPart,
  type Reading,
  readingLimits,
  type Span,
  UNKNOWN_PLACE,
} from "../../../src/core/index.js";
import { partOf, ruled } from "../rate/partOf.js";

function limits(className: string, quantity: Reading["quantity"], stated: Partial<ListedPart> = {}, role?: string) {
  const part = partOf(className, role ?? null, stated);
  const from = { part, ...ruled(part), place: UNKNOWN_PLACE, given: {} };
  return readingLimits({ quantity, value: 1, inPlace: false, accuracy: null }, from);
}

const TWO_HUNDRED: Partial<ListedPart> = { value: 200 };

describe("the limits of a reading", () => {
  // Common practice, as in the tests of each type's row.
  test.each<[string, Reading["quantity"], Partial<ListedPart>, Partial<Span>, string]>([
    ["metal_clad_ww", "insulation", TWO_HUNDRED, { min: 10e6 }, "hardware: 10 MΩ at 500 V"],
    ["transformer", "insulation", TWO_HUNDRED, { min: 10e6 }, "a winding to its core: the same"],
    ["paper_wax", "insulation", { value: 1e-7 }, { min: 200e6 }, "paper whose use is not known: as coupling"],
    ["thermistor", "resistance", TWO_HUNDRED, { min: 160, max: 240 }, "cold within 20 %"],
    ["elec_nonpolar", "capacitance", { value: 1e-5 }, { min: 8e-6, max: 1.2e-5 }, "value matters: 20 %"],
    ["pot_switch", "resistance", {}, { max: 0.5 }, "a contact"],
    ["fuse", "resistance", {}, { max: 100 }, "anything but open"],
  ])("of a %s, %s of %o: %o (%s)", (className, quantity, stated, expected, _why) => {
    const found = limits(className, quantity, stated);
    for (const [end, value] of Object.entries(expected)) expect(found?.[end as keyof Span]).toBeCloseTo(value, 9);
  });

  test("a winding is held to 15 % of what the user says it has; a figure of the list may be an impedance", () => {
    expect(limits("transformer", "resistance", TWO_HUNDRED)).toBeNull();
    const part = { ...partOf("transformer", null, TWO_HUNDRED), value: fact(200, "user", "you") };
    const from = { part, ...ruled(part), place: UNKNOWN_PLACE, given: {} };
    const read = { quantity: "resistance", value: 1, inPlace: false, accuracy: null } as const;
    expect(readingLimits(read, from)?.min).toBeCloseTo(170, 9);
    expect(readingLimits(read, from)?.max).toBeCloseTo(230, 9);
  });

  test("a meter's multiplier is held to its mark, any other composition part to 20 % where that is wider", () => {
    const stated = { value: 1e6, tolerance: { minus: 0.01, plus: 0.01 } };
    expect(limits("carbon_comp", "resistance", stated, "meter")?.max).toBeCloseTo(1.01e6, 3);
    expect(limits("carbon_comp", "resistance", stated)?.max).toBeCloseTo(1.2e6, 3);
  });
});
