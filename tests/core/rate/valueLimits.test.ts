import { describe, expect, test } from "vitest";
import type { ListedPart, Settings } from "../../../src/core/index.js";
import { partOf, rate } from "./partOf.js";

const fitted = (className: string, stated: Partial<ListedPart>, settings: Settings = {}) =>
  rate(partOf(className, null, stated), {}, settings).aim?.text;

describe("which side of the printed value", () => {
  test.each<[string, Partial<ListedPart>, string, string, string]>([
    // The trade's example: .005 becomes .0056 for those who never go below (seen on a restorer's site).
    ["paper_wax", { value: 5e-9 }, "ratio", "0.0047 µF", "the nearest"],
    ["paper_wax", { value: 5e-9 }, "not-below", "0.0056 µF", "never below: E12 has it where E6 has not"],
    ["paper_wax", { value: 2e-8 }, "not-above", "0.018 µF", "never above"],
    ["paper_wax", { value: 1e-7 }, "not-below", "0.1 µF", "the printed value itself is on either side"],
    ["carbon_comp", { value: 25e3 }, "not-below", "27 k", "24 k would be nearer"],
    ["wirewound", { value: 2500, watts: 10 }, "not-above", "2.5 k", "still sold as wire"],
  ])("a %s of %o with %s becomes %s: %s", (className, stated, nearest_by, text, _why) => {
    expect(fitted(className, stated, { nearest_by })).toBe(text);
  });

  test("where nothing single lies on that side, two make it up on that side", () => {
    const { aim, window } = rate(partOf("film_old", "buffer", { value: 9.9e-9 }), {}, { nearest_by: "not-above" });
    expect(window?.max).toBeCloseTo(9.9e-9, 15);
    expect(aim?.pieces.length).toBe(2);
  });
});

describe("a value that is tuned", () => {
  // Common practice: the large one is fitted, what it lacks is padded. Values worked by hand.
  test.each([
    [2.5e-10, "220 pF || 30 pF", "220 and 30 make 250"],
    [4.1e-10, "390 pF || 20 pF", "390 and 20 make 410"],
  ])("%d farads are made up of a large capacitor and its pad: %s (%s)", (value, text) => {
    const part = partOf("mica_foil", "oscillator", { value, tolerance: { minus: 0.05, plus: 0.05 } });
    expect(rate(part).aim?.text).toBe(text);
  });

  test("a control is never made up of two", () => {
    expect(rate(partOf("pot", null, { value: 350e3 })).aim).toBeNull();
  });
});
