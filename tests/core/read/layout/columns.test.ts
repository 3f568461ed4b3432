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

const LETTERED = `REF   DESCRIPTION               PART NO.
C2    .1 mfd 400 volt           A-1002
SPKR  6 inch P.M. speaker       A-2001
ANT   Loop aerial               A-2002
VC    500,000 ohm volume control A-1011
DIAL  Dial lamp 6-8 V .15 A     A-1014
R2    220 ohm 1 watt            A-1013`;

test("a column that names parts by words as well stays theirs, whatever part numbers look like", () => {
  const { parts } = readText(LETTERED);
  expect(parts.map((part) => part.designators[0])).toEqual(["C2", "SPKR", "ANT", "VC", "DIAL", "R2"]);
  expect(partOf(LETTERED, "R2")).toMatchObject({ kind: "resistor", value: 220, stockNumber: "A-1013" });
});

test("letters without a number tell no kind beside a noun: VC is a volume control here, no variable capacitor", () => {
  expect(partOf(LETTERED, "VC")).toMatchObject({ kind: "potentiometer", value: 500e3 });
});
