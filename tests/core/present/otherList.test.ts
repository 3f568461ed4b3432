import fc from "fast-check";
import { expect, test } from "vitest";
import { readOtherList, writeOtherList } from "../../../src/core/present/otherList.js";

const TEXTS = ["2 W", "600 V", "390 pF", "5 pF to 30 pF", "-20/+80 %", "mica", "0.047 µF"];

const saying = fc.record({
  field: fc.constantFrom("watts", "volts", "value", "tolerance", "dielectric"),
  text: fc.constantFrom(...TEXTS),
  leftAside: fc.boolean(),
});
const other = fc.record({
  id: fc.integer({ min: 1, max: 999 }).map((nth) => `HL-${nth}a`),
  says: fc.array(saying, { minLength: 1, maxLength: 4 }),
});

test("what other lists say reads back as it was written", () => {
  fc.assert(
    fc.property(fc.array(other, { maxLength: 3 }), (all) => {
      expect(readOtherList(writeOtherList(all))).toEqual(all);
    }),
  );
});

test("a row that says the same is not written", () => {
  expect(writeOtherList([{ id: "HL-1", says: [] }])).toBe("");
});

test.each([
  ["nothing", null],
  ["a remark of the user's own", "see the other sheet"],
])("%s is no saying", (_what, cell) => expect(readOtherList(cell)).toEqual([]));
