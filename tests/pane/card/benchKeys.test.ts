import { expect, test } from "vitest";
import { isState, namedRow, nextState } from "../../../src/pane/card/benchKeys.js";

const ROWS = ["R1", "R12", "C3A", "12"].map((designator) => ({ values: { designator } }));

test.each<[string, string, string | undefined, string]>([
  ["R12", "R1", "R12", "as it is printed"],
  ["r-12", "C3A", "R12", "as people type it"],
  ["1", "R12", "R1", "a figure alone keeps the letter"],
  ["3a", "C3A", "C3A", "so does a section of a can"],
  ["12", "R1", "12", "a designator that is a figure comes first"],
  ["99", "R1", undefined, "no such part"],
])("%s after %s is %s: %s", (typed, before, found) => {
  expect(namedRow(typed, ROWS, before)?.values.designator).toBe(found);
});

test("the state key goes round, and leaves a figure alone", () => {
  expect(["", "open", "short", "jumps"].map(nextState)).toEqual(["open", "short", "jumps", ""]);
  expect([isState("Open "), isState("61")]).toEqual([true, false]);
});
