import fc from "fast-check";
import { expect, test } from "vitest";
import { impulseVolts, LINE_PLACES, xyClass } from "../../../src/core/index.js";

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

test("no class both serves at a place and is refused there", () => {
  for (const place of LINE_PLACES) {
    const { classes, refused } = xyClass(place);
    expect(classes.filter((name) => refused.includes(name))).toEqual([]);
  }
});

test("a larger part is never tested with more, and a class of the same letter with a higher figure never with more", () => {
  const farads = fc.double({ min: 1e-10, max: 1e-4, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom("X1", "X2", "Y1", "Y2", "Y4"), farads, farads, (safetyClass, a, b) => {
      const [small, large] = [Math.min(a, b), Math.max(a, b)];
      const tested = (farads: number) => impulseVolts({ safetyClass, farads })!;
      expect(tested(large)).toBeLessThanOrEqual(tested(small));
      const [strong, weak] = [`${safetyClass[0]}1`, `${safetyClass[0]}2`];
      expect(impulseVolts({ safetyClass: weak, farads: a })!).toBeLessThan(
        impulseVolts({ safetyClass: strong, farads: a })!,
      );
    }),
  );
});
