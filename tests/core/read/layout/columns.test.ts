import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const NUMBERED = `           R E S I S T O R S
No.        Ohms      Watts    Tol.    Part No.
 1      100,000        1/2     20     R-1042
 2        2,000         1      10     R-2021
 3      500,000       (Volume Control)  P-5042
 4    1,000,000        1/2     20     R-1052`;

test("numbers name the parts where no other column does, and part numbers never do", () => {
  const { parts } = readText(NUMBERED);
  expect(parts.map((part) => part.designators)).toEqual([["1"], ["2"], ["3"], ["4"]]);
  expect(partOf(NUMBERED, "2")).toMatchObject({ value: 2000, watts: 1, stockNumber: "R-2021" });
});

test("a figure set to the right may begin before its head", () => {
  expect(partOf(NUMBERED, "4")).toMatchObject({ value: 1e6, watts: 0.5 });
});

test("words among watts or volts describe the part", () => {
  expect(partOf(NUMBERED, "3")).toMatchObject({ kind: "potentiometer", value: 500e3 });
});
