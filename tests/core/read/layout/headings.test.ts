import { expect, test } from "vitest";
import { isSpacedOut, sectionName } from "../../../../src/core/read/layout/headings.js";
import { partOf, readText } from "../readText.js";

const HEADINGS: readonly (readonly [text: string, name: string | null, why: string])[] = [
  ["SHEET 1 - HEAD AMPLIFIER", "HEAD AMPLIFIER", "the sheet's number counts, its name names"],
  ["2. OUTPUT STAGE", "OUTPUT STAGE", "a number with a point"],
  ["-3- OUTPUT PANEL", "OUTPUT PANEL", "a number between dashes"],
  ["Sub-Assembly: VIDEO AMPLIFIER", "VIDEO AMPLIFIER", "a word that says what is named"],
  ["IV) Power Unit", "Power Unit", "a Roman number"],
  ["CHASSIS B (201-B)", "CHASSIS B", "a chassis keeps its letter"],
  ["SHEET 3", null, "a page's number names nothing"],
  ["Section 6 - Parts List", null, "nor does the title of the list"],
];

test.each(HEADINGS)("%s names %s: %s", (text, name) => {
  expect(sectionName(text)).toBe(name);
});

test("a heading may stand behind its number with wide blanks between", () => {
  expect(isSpacedOut("        SECTION A   --   R-F UNIT")).toBe(true);
  expect(isSpacedOut("  1.   R1    470K")).toBe(false);
});

test("numbered headings above two panels part what numbers anew", () => {
  const { parts } = readText(`1. OSCILLATOR
-------------
R1  22k   10%  1/2W         C1  300p  mica 2%
R2  1M    20%  1/2W         C2  0.01  500V paper

2. OUTPUT STAGE
---------------
R1  470k  20%  1/2W         C1  0.02  500V paper`);
  expect(parts.map((part) => part.section)).toEqual([...Array(4).fill("OSCILLATOR"), ...Array(2).fill("OUTPUT STAGE")]);
});

test("capitals alone between the lines of a drawn table head the rows below", () => {
  const { parts } = readText(`+------+------------------+-----+
| ITEM | DESCRIPTION      | QTY |
+------+------------------+-----+
|      | CHASSIS A        |     |
+------+------------------+-----+
| R1   | 47K, 1/2W        |  1  |
+------+------------------+-----+
|      | CHASSIS B        |     |
+------+------------------+-----+
| R1   | 100K, 1W         |  1  |
+------+------------------+-----+`);
  expect(parts.map((part) => part.section)).toEqual(["CHASSIS A", "CHASSIS B"]);
});

test("an assembly's number before a name heads its parts and is no part", () => {
  const { parts } = readText(`A1 - OSCILLATOR BOARD
A1R1    22K  1/4W 5%            A1C1    47 PF MICA 500V

A2 - POWER AMPLIFIER
A2R1    10   1W  5%             A2C1    .001 UF 1KV CER`);
  expect(parts.map((part) => `${part.designators[0]} ${part.section}`)).toEqual([
    "A1R1 OSCILLATOR BOARD",
    "A1C1 OSCILLATOR BOARD",
    "A2R1 POWER AMPLIFIER",
    "A2C1 POWER AMPLIFIER",
  ]);
});

test("a heading in the description's column may say more behind its comma", () => {
  const text = `Sym.        Description                             Part No.
C4          100 MFD  50V                            C-502
            CAPACITORS, MICA, 500V
C7,C8       330 MMF  5%                             C-601`;
  expect(partOf(text, "C4").dielectric).toBeNull();
  expect(partOf(text, "C8")).toMatchObject({ value: 330e-12, dielectric: "mica", volts: 500 });
});
