import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

const SPANNED = `                      RESISTORS
 ITEM      RATING           REPLACEMENT DATA          NOTES
  No.   OHMS    WATTS    MAKER A      MAKER B
                         PART No.     PART No.
  R1   470K     1/2      39A10-74     BT-470K         AVC Filter
  R5   5000     10       39A40-3      W-5000          Bleeder`;

test("a head over several columns names none of them: those below it do", () => {
  expect(partOf(SPANNED, "R1")).toMatchObject({ value: 470e3, watts: 0.5 });
  expect(partOf(SPANNED, "R5")).toMatchObject({ value: 5000, watts: 10 });
});

test("a heading that happens to stand over two heads is still a heading", () => {
  const text = `*** TUNER ***
Ref     Part      Description
C1      301-22    22 mmf
*** SWEEP CHASSIS ***
Ref     Part      Description
C1      301-47    47 mmf
R1      401-47K   47K`;
  const sections = readText(text).parts.map(({ section }) => section);
  expect(sections).toEqual(["TUNER", "SWEEP CHASSIS", "SWEEP CHASSIS"]);
});

const CAN = ` ITEM   CAP.    VOLT.   REPLACEMENT DATA
  C1A   40      450     14B22       Filter
   B    30      450                 Filter
   C    20      25                  Cathode
  C2    .05     600     P688-05     Coupling`;

test("letters below a can's first section go on with it, and a can's bare figures are microfarads", () => {
  const { parts } = readText(CAN);
  expect(parts.map(({ designators }) => designators[0])).toEqual(["C1", "C2"]);
  expect(parts[0]!.sections).toEqual([
    { suffix: "A", farads: 40e-6, volts: 450 },
    { suffix: "B", farads: 30e-6, volts: 450 },
    { suffix: "C", farads: 20e-6, volts: 25 },
  ]);
});

test("a column that begins right under its head stays there, though another one in its reach is fuller", () => {
  expect(partOf(CAN, "C2")).toMatchObject({ value: 0.05e-6, volts: 600, dielectric: null });
});
