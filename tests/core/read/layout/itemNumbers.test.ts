import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const LIST = ` 1 R1   resistor 1 MEG 1/2w    4-105
 2 R2   resistor 4700 1/2w     4-472
 3      terminal strip         7-100
 4 R3,4 resistor 47 1w         4-470`;

test("numbers that count the lines are no quantities", () => {
  const { parts } = readText(LIST);
  expect(parts.map((part) => part.quantity)).toEqual([1, 1, 1, 2]);
  expect(partOf(LIST, "R4")).toMatchObject({ value: 47, watts: 1, stockNumber: "4-470" });
});

test("numbers that do not run are quantities", () => {
  const text = " 4   R1,R2,R3,R4   47K 1/2W\n 1   R5            1 meg\n 2   C1,C2         .01 mfd";
  expect(readText(text).parts.map((part) => part.quantity)).toEqual([4, 1, 2]);
});

test("numbers before each of several parts in a line say nothing of them", () => {
  const text = "  1)  R1 = 1 meg   2)  R2 = 47K     3)  R3 = 220K\n  4)  R4 = 10K     5)  C1 = 100pF   6)  C2 = .01uF";
  expect(readText(text).parts.map((part) => part.value)).toEqual([1e6, 47e3, 220e3, 10e3, 100e-12, 0.01e-6]);
});
