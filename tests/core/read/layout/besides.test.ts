import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

test("the name of a group, written once beside its first part, is the section of all", () => {
  const { parts } = readText(`  Input Amplifier    R1   10K      1/4W
                     R2   4.7K     1/4W
                     C1   22mf     25V
  Driver             R1   2.2K     1/4W
                     C1   100mf    50V`);
  expect(parts.map((part) => [part.section, part.designators[0]])).toEqual([
    ["Input Amplifier", "R1"],
    ["Input Amplifier", "R2"],
    ["Input Amplifier", "C1"],
    ["Driver", "R1"],
    ["Driver", "C1"],
  ]);
});

test("what stands before every part says where it serves, and names no section", () => {
  const text = `Grid leak       R1   1 meg    1/2 w
Cathode bias    R2   470      1 w
Coupling        C1   .02 mfd  400 v`;
  expect(partOf(text, "R2")).toMatchObject({ section: null, value: 470, watts: 1 });
  expect(partOf(text, "C1")).toMatchObject({ value: 0.02e-6, volts: 400 });
});

test("a name before several parts in one line is that of their section", () => {
  const { parts } = readText(`EXCITER SUPPLY  C1  2000 MF 15V   R1  1 OHM 10W
PHOTOCELL AMP   R1  2.2 MEG       R2  1500
                R3  100K          C2  25 MF 25V`);
  expect(parts.map((part) => part.section)).toEqual([
    ...Array(2).fill("EXCITER SUPPLY"),
    ...Array(4).fill("PHOTOCELL AMP"),
  ]);
});
