import fc from "fast-check";
import { expect, test } from "vitest";
import { dealtOut, readForWhom, writeForWhom } from "../../../src/core/index.js";

test("a count stands behind a part that gets several", () => {
  const shares = [
    { part: "HL-3", pieces: 2 },
    { part: "MB-1a", pieces: 1 },
  ];
  expect(writeForWhom(shares)).toBe("HL-3 ×2 MB-1a");
  expect(readForWhom("HL-3 x2, MB-1a")).toEqual(shares);
});

test("what is written reads back", () => {
  const share = fc.record({
    part: fc.stringMatching(/^[A-Z]{2}-\d{1,3}[a-c]?$/),
    pieces: fc.integer({ min: 1, max: 99 }),
  });
  fc.assert(
    fc.property(fc.array(share), (shares) => {
      expect(readForWhom(writeForWhom(shares))).toEqual(shares);
    }),
  );
});

test("three of five: the first that asked get theirs first", () => {
  expect(dealtOut(readForWhom("A-1 ×2 A-2 ×2 A-3"), 3)).toEqual([
    { part: "A-1", pieces: 2 },
    { part: "A-2", pieces: 1 },
  ]);
});
