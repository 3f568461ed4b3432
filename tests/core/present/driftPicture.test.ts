import { expect, test } from "vitest";
import { driftPicture } from "../../../src/core/present/driftPicture.js";
import type { PartsRow } from "../../../src/core/present/sheets/parts.js";

const OLD = { kind: "resistor", value: "470 k", size: 470e3, tolerance: "±20 %", action: "replace" };
const NEW = { newValue: "470 k", newSize: 470e3, newTolerance: "±5 %" };
const pictureOf = (cells: Partial<PartsRow>) => driftPicture({ ...OLD, newTolerance: null, ...cells } as PartsRow);

test("a resistor that drifted up stands right of both listed and new limits, on one scale with its figures", () => {
  const seen = pictureOf({ ...NEW, reading: "612 k" })!;
  // Worked: limits 376 k to 564 k and 446.5 k to 493.5 k. The scale runs over 236 k, with 8 % more at each end.
  const at = (value: number) => (value - 376e3 + 0.08 * 236e3) / (236e3 * 1.16);
  expect(seen.listed.min).toBeCloseTo(at(376e3), 9);
  expect(seen.listed.max).toBeCloseTo(at(564e3), 9);
  expect(seen.fresh?.min).toBeCloseTo(at(446.5e3), 9);
  expect(seen.fresh?.max).toBeCloseTo(at(493.5e3), 9);
  expect(seen.reading.at).toBeCloseTo(at(612e3), 9);
  expect(seen.reading.isOff).toBe(false);
  // From 357.12 k (-24 %) to 630.88 k (+34 %): every 20 % of 470 k is three marks.
  expect(seen.marks.map(({ text }) => text)).toEqual(["−20 %", "0 %", "+20 %"]);
  expect(seen.marks[2]!.at).toBeCloseTo(at(564e3), 9);
  expect(seen.text).toBe("Listed 376 k to 564 k; new 446.5 k to 493.5 k; reads 612 k, +30 %");
});

test("a part that stays shows its reading between its listed limits, and no new ones", () => {
  const seen = pictureOf({ ...NEW, action: "keep", reading: "470 k" })!;
  expect(seen.fresh).toBeNull();
  expect(seen.reading.at).toBeCloseTo((seen.listed.min + seen.listed.max) / 2, 9);
});

test("a reading of ten times the value is held at the end of the scale and said to be off it", () => {
  const seen = pictureOf({ reading: "4.7 M" })!;
  expect(seen.reading.isOff).toBe(true);
  expect(seen.reading.at).toBeLessThanOrEqual(1);
  expect(seen.listed.max - seen.listed.min).toBeGreaterThan(0.1);
  expect(seen.text).toMatch(/reads 4.7 M, 10 times, off this scale$/);
});

test("a capacitor's picture is of its capacitance, whatever else was read", () => {
  const cells = { kind: "capacitor", value: "0.1 µF", size: 1e-7 };
  expect(pictureOf({ ...cells, reading: "5 µA; 0.11 µF" })?.reading.text).toBe("0.11 µF, +10 %");
});

test.each([
  ["nothing was read", { reading: null }],
  ["open is no figure", { reading: "open" }],
  ["an unreadable reading is none", { reading: "about the same" }],
  ["no tolerance, no limits", { reading: "612 k", tolerance: null }],
  ["no value, no limits", { reading: "612 k", size: null }],
  ["a leakage is not its capacitance", { kind: "capacitor", value: "0.1 µF", size: 1e-7, reading: "5 µA" }],
])("there is no picture where %s", (_reason, cells) => {
  expect(pictureOf(cells)).toBeNull();
});
