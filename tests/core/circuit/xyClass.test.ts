import { expect, test } from "vitest";
import { impulseVolts, xyClass } from "../../../src/core/index.js";

test.each([
  ["line to line", "X2"],
  ["line to metal", "Y2"],
  ["line to hand", "Y1"],
])("%s wants %s first", (place, first) => expect(xyClass(place).classes[0]).toBe(first));

test("a Y part may stand in for an X part, an X part never for a Y part", () => {
  expect(xyClass("line to line").classes).toContain("Y2");
  expect(xyClass("line to metal").refused).toEqual(["X1", "X2"]);
});

test("where one part alone stands between line and hand, one Y2 is not enough", () => {
  expect(xyClass("line to hand").refused).toContain("Y2");
  expect(xyClass("line to hand").classes).toContain("Y2 + Y2");
});

test("an unknown place is refused with those that are known", () => {
  expect(() => xyClass("grid")).toThrow("line to line; line to metal; line to hand");
  expect(() => impulseVolts({ safetyClass: "Z1", farads: 1e-9 })).toThrow("A class is one of X1");
});
