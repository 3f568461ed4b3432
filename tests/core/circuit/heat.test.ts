import fc from "fast-check";
import { expect, test } from "vitest";
import { heatShare } from "../../../src/core/index.js";

const film = { kneeCelsius: 70, zeroCelsius: 155 };

test.each([
  // celsius, share, why
  [20, 1, "cool surroundings change nothing"],
  [70, 1, "full power at the knee"],
  [112.5, 0.5, "half way down"],
  [155, 0, "nothing at the zero"],
  [200, 0, "and nothing beyond"],
])("metal film at %d °C carries %d of its watts: %s", (celsius, share) => {
  expect(heatShare({ ...film, celsius })).toBeCloseTo(share, 12);
});

test("hotter surroundings never allow more", () => {
  const celsius = fc.double({ min: -55, max: 300, noNaN: true });
  fc.assert(
    fc.property(celsius, celsius, (a, b) => {
      expect(heatShare({ ...film, celsius: Math.max(a, b) })).toBeLessThanOrEqual(
        heatShare({ ...film, celsius: Math.min(a, b) }),
      );
    }),
  );
});

test("a curve that falls before its knee is refused", () => {
  expect(() => heatShare({ celsius: 20, kneeCelsius: 70, zeroCelsius: 70 })).toThrow("The zero lies above the knee.");
});
