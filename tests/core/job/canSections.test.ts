import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canSections } from "../../../src/core/index.js";

/** Sections in short: letter, microfarads, volts. */
const inShort = (text: string) =>
  canSections(text)
    .map(({ suffix, farads, volts }) => `${suffix ?? ""}${Math.round(farads! * 1e9) / 1e3}/${volts ?? "?"}`)
    .join(" ");

describe("the sections of a can", () => {
  test.each([
    ["20-20/150", "20/150 20/150"], // constructed from common practice
    ["20+20 µF 150 V", "20/150 20/150"],
    ["20-20 @ 150 V", "20/150 20/150"],
    ["8-8", "8/? 8/?"],
    ["40-40-20/450-450-25", "40/450 40/450 20/25"],
    ["20-20 @ 450/25 V", "20/450 20/25"],
    ["40-40-20 mfd, 450-450-25 V", "40/450 40/450 20/25"],
    ["80-20 mfd 150 WV", "80/150 20/150"],
    ["A 40 mf 450 V, B 20 mf 450 V, C 20 mf 25 V", "A40/450 B20/450 C20/25"],
    ["20 mfd 450 V", "20/450"],
  ])("%s are %s", (text, sections) => expect(inShort(text)).toBe(sections));

  test.each(["", "hello", "20 turns"])('"%s" is no can, and what would work is said', (text) => {
    expect(() => canSections(text)).toThrow("Write it like 20-20/150");
  });

  test("as many sections come out as figures went in, in order", () => {
    const farads = fc.array(fc.constantFrom(4, 8, 10, 16, 20, 30, 40, 50, 80), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(farads, fc.constantFrom(25, 150, 350, 450), (each, volts) => {
        expect(inShort(`${each.join("-")}/${volts}`)).toBe(
          each.map((microfarads) => `${microfarads}/${volts}`).join(" "),
        );
      }),
    );
  });
});
