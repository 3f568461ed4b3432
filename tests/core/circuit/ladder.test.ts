import { expect, test } from "vitest";
import { rungFor, stepUp } from "../../../src/core/index.js";

const WATTS = [0.125, 0.25, 0.5, 1, 2, 3, 5, 7, 10];

test.each([
  // from, steps, to, why (common practice)
  [0.5, 1, 1, "half a watt becomes 1 W"],
  [1, 1, 2, "1 W becomes 2 W"],
  [2, 1, 3, "4 W is not commonly made"],
  [7, 1, 10, "wirewound goes one step, never doubled"],
  [1 / 3, 0, 0.5, "a third of a watt is not made today"],
  [1 / 3, 1, 1, "and one step further is 1 W"],
  [0.5, 0, 0.5, "no step keeps it"],
])("%d W, %d steps up, is %d W: %s", (from, steps, to) => expect(stepUp(from, WATTS, steps)).toBe(to));

test("above the ladder's end nothing is made, and that is said", () => {
  expect(() => stepUp(10, WATTS, 1)).toThrow("The largest rating that is made is 10.");
  expect(() => rungFor(11, WATTS)).toThrow("The largest rating that is made is 10.");
});

test("636.4 V needs 1000 V: 630 V falls short by one in a hundred", () => {
  expect(rungFor(636.4, [400, 630, 1000])).toBe(1000);
});
