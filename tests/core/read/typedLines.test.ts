import { expect, test } from "vitest";
import { codesOf, partOf, readText } from "./readText.js";

test("a heading gives its unit to the bare numbers below it", () => {
  expect(partOf("CONDENSERS (mfd.)\nC4   8    450 v. wkg.", "C4")).toMatchObject({ value: 8e-6, volts: 450 });
});

test("limits of a part selected in test may stand in its remarks", () => {
  const text = "Symbol    Value        Remarks\nR4        10K          -\nR5        Selected     68K to 120K, in test";
  expect(partOf(text, "R5")).toMatchObject({ valueMin: 68e3, valueMax: 120e3, valueState: "selected-in-test" });
});

test("watts in brackets count where no others are printed", () => {
  expect(partOf("R4    1,000 (1 watt)", "R4")).toMatchObject({ value: 1000, watts: 1 });
});

test("a box to tick may be wide, with a count behind it", () => {
  expect(partOf("(  ) 2   R2, R8     2200 ohm, 1 watt\n(  ) 1   R5         100 ohm", "R8")).toMatchObject({
    value: 2200,
    quantity: 2,
  });
});

test("leaders before designators do not run lines together", () => {
  const text =
    "Resistors.\n  1 MEG .............. R1, R12\n  3500 ohm, 2 watt ... R6\nM after a figure means thousand ohms.";
  expect(partOf(text, "R12").value).toBe(1e6);
  expect(partOf(text, "R6")).toMatchObject({ value: 3500, watts: 2, quantity: 1 });
});

test("in running text a part may begin behind a comma with words instead of a value", () => {
  const text = `R107 8.2K, R108 5K 5W wirewound, R109 same as R107, R110 selected (nominal 33K)

V101 tube, V102 tube, L101 10 mh choke, T101 sweep transformer`;
  expect(partOf(text, "R109")).toMatchObject({ value: 8200, sameAs: "R107" });
  expect(partOf(text, "R110")).toMatchObject({ value: 33e3, valueState: "selected-in-test" });
  expect(
    readText(text)
      .parts.map((part) => part.kind)
      .slice(4),
  ).toEqual(["tube", "tube", "inductor", "transformer"]);
});

test("a line of running text may begin with the name of its section", () => {
  const { parts } = readText(`Stage 1:  R1 100k, R2 2.2k, R3 47k 1W; C1 0.1 mfd 400V, C2 50 mfd 12V.
Stage 2:  R1 470k, R2 1k, R3 33k 2W; C1 0.05 mfd 400V, C2 25 mfd 25V.`);
  expect(parts.map((part) => part.section)).toEqual([...Array(5).fill("Stage 1"), ...Array(5).fill("Stage 2")]);
});

test.each([
  ["R1. One megohm, quarter watt.", "R1", { value: 1e6, watts: 0.25 }],
  ["R3. Two hundred and twenty ohms, one watt.", "R3", { value: 220, watts: 1 }],
  ["C1. Point one microfarad, three hundred and fifty volts.", "C1", { value: 0.1e-6, volts: 350 }],
  ["C4. Point zero five microfarads.", "C4", { value: 0.05e-6 }],
])("%s is read in words", (text, name, part) => {
  expect(partOf(text, name)).toMatchObject(part);
});

test("a note on small values makes no capacitor of a quarter picofarad", () => {
  const text = "Capacitors in pF up to 999, in uF below 1.\n\nC1   Mica    220\nC2   Paper   0.25";
  expect(partOf(text, "C1").value).toBe(220e-12);
  expect(partOf(text, "C2").value).toBe(0.25e-6);
  expect(codesOf(partOf(text, "C2"))).toContain("unit-assumed");
});

test("things without a name are counted in brackets", () => {
  expect(readText("[ ] R1 ..... 10K 1/2W\n[ ] ........ Knobs (3)").parts.map((part) => part.quantity)).toEqual([1, 3]);
});

test("small letters name the sections of a can too", () => {
  const { parts } = readText("C3a     30 mfd., 450 volts, electrolytic\nC3b     20 mfd., 450 volts");
  expect(parts).toHaveLength(1);
  expect(parts[0]).toMatchObject({ designators: ["C3"], sections: [{ suffix: "a" }, { suffix: "b" }] });
});
