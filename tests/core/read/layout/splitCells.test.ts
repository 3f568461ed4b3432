import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

test("names may stand behind the name of the thing, where no column holds them", () => {
  const text = `NO.  NAME                   VALUE               RATING
 1   Resistor R1            500,000 ohms        1/2 w.
 2   Condenser C1           .1 mfd.             400 v.`;
  expect(partOf(text, "R1")).toMatchObject({ kind: "resistor", value: 500e3, watts: 0.5 });
  expect(partOf(text, "C1")).toMatchObject({ value: 0.1e-6, volts: 400 });
});

test("names may stand before the description under one head of a kind", () => {
  const text = `"C" PARTS                                     Part    List
                                              No.     Price
C2 Cond., .1 mfd 200 volt                     4022      .18
C3 Cond., .00025 mfd mica                     4031      .15`;
  expect(partOf(text, "C3")).toMatchObject({ value: 0.00025e-6, dielectric: "mica", stockNumber: "4031" });
});

test("designators of one class set wide apart are one list", () => {
  const text = `   R1   R5   R7            100K    1/2 W
   R6   R8  THRU  R10      15K     2 W
   C1                      .01UF   500 V`;
  expect(readText(text).parts.map((part) => part.designators)).toEqual([
    ["R1", "R5", "R7"],
    ["R6", "R8", "R9", "R10"],
    ["C1"],
  ]);
  expect(partOf(text, "R9")).toMatchObject({ value: 15e3, watts: 2 });
});

test("a count may stand with a dash behind the box to tick, the names behind leaders", () => {
  const text = `___ 2 - 100 ohm, 1/2 watt (brown-black-brown) . . . . R1, R2
___ 1 - 16 mfd, 350 volt electrolytic . . . . . . . . C4
___ 4 - Rubber feet`;
  expect(readText(text).parts.map((part) => [part.value, part.quantity])).toEqual([
    [100, 2],
    [16e-6, 1],
    [null, 4],
  ]);
});

test("leaders end before the point of a value", () => {
  expect(partOf("C1 . . . . . .02 MFD. 400 V.\nC2 . . .1 MFD. 600 V.", "C2").value).toBe(0.1e-6);
});
