import { describe, expect, test } from "vitest";
import { codesOf, partOf, readText } from "./readText.js";

describe("parts that are not plain", () => {
  test.each([
    // text, name, what is read, why
    [
      "C1    Electrolytic, A - 80 MFD, 450V;  B - 40 MFD, 25V",
      "C1",
      {
        value: null,
        volts: null,
        sections: [
          { suffix: "A", farads: 80e-6, volts: 450 },
          { suffix: "B", farads: 40e-6, volts: 25 },
        ],
      },
      "sections by letter",
    ],
    [
      "C1    ◗ 30 MFD., ■ 10 MFD., all 350 W.V. elect.",
      "C1",
      {
        volts: 350,
        sections: [
          { suffix: "half-moon", farads: 30e-6, volts: 350 },
          { suffix: "square", farads: 10e-6, volts: 350 },
        ],
      },
      "sections by mark",
    ],
    [
      "C8A,B   20-20 mfd, 450 V elect.",
      "C8",
      {
        sections: [
          { suffix: "A", farads: 20e-6, volts: 450 },
          { suffix: "B", farads: 20e-6, volts: 450 },
        ],
      },
      "letters from the name",
    ],
    [
      "C1    Trimmer, 3-30 mmf",
      "C1",
      { value: null, valueState: "range", valueMin: 3e-12, valueMax: 3e-11 },
      "a range",
    ],
    [
      "R1    nominal 1,500 ohms; selected at test from 1,200 to 1,800 ohms",
      "R1",
      { value: 1500, valueState: "selected-in-test", valueMin: 1200, valueMax: 1800 },
      "selected at test",
    ],
    ["C1    .1 or .25 mfd", "C1", { value: null, valueState: "alternatives" }, "no preference"],
    [
      "R1    27K, 1W (33K in early sets)",
      "R1",
      { value: 27_000, valueState: "alternatives", valueMax: 33_000 },
      "an earlier value",
    ],
    ["R1    Not used", "R1", { valueState: "not-fitted", quantity: 1 }, "not fitted"],
    [
      "L1    Peaking coil, 250 UH, wound on 22K resistor",
      "L1",
      { value: 250e-6, inner: [{ kind: "resistor", value: 22_000 }] },
      "a coil on a resistor",
    ],
    [
      "N1    Printed network: 22K & 8200 ohms; .002 & .005 MFD",
      "N1",
      { kind: "network", inner: [{ value: 22_000 }, { value: 8200 }, { value: 2e-9 }, { value: 5e-9 }] },
      "a network",
    ],
    [
      "C1    5, +-.25 mmf, NPO",
      "C1",
      { value: 5e-12, tolerance: { minus: 0.05, plus: 0.05 }, dielectric: "ceramic" },
      "an absolute tolerance tells the unit",
    ],
    ["C1    5000 mmf., ceramic disc, GMV", "C1", { tolerance: { minus: 0, plus: 1 } }, "guaranteed minimum value"],
    ["C1    CLAMP, FOR C32", "C1", { kind: "other" }, "a clamp under C"],
    [
      "R1    Treble; 250K, reverse audio taper",
      "R1",
      { kind: "potentiometer", taper: "reverse audio" },
      "a control by its use",
    ],
  ] as const)("%s", (text, name, read, _why) => {
    expect(partOf(text, name)).toMatchObject(read);
  });

  test("same as takes all that the other states and keeps its own", () => {
    const text = "C1    .01 mfd, 400 V. paper\nC2    Same as C1 except 600 V.";
    expect(partOf(text, "C2")).toMatchObject({ value: 1e-8, volts: 600, dielectric: "paper", sameAs: "C1" });
  });

  test("a part number stands for its value in the user's own table", () => {
    const text = "REF DES\tPART NO.\tDESCRIPTION\tVALUE\nR1\t1006750-39\tRESISTOR\t";
    expect(partOf(text, "R1", { partNumbers: new Map([["1006750-39", "2 k"]]) }, "\t").value).toBe(2000);
    expect(partOf(text, "R1", {}, "\t").value).toBeNull();
  });

  test("a slip corrects, and says that list and slip differ", () => {
    const text = "Ref.   Description\nC12    Paper, .0047 mfd, 400 V\n\nERRATA\n  Page 31   C12 should read .047 mfd.";
    expect(partOf(text, "C12")).toMatchObject({ value: 4.7e-8, lines: [2, 5], warnings: [{ code: "conflict" }] });
  });
});

describe("faults of the list are read as printed, and said", () => {
  test.each([
    ["C1    680UF ±2% mica, 300V", "C1", 680e-6, "implausible-value", "microfarads of mica"],
    ["C1    .047 MMF., 400 V. paper", "C1", 0.047e-12, "implausible-value", "too small for anything"],
    ["R1    l00K", "R1", 100_000, "unreadable", "a letter for a figure"],
    ["R1    27,0000 ohms", "R1", null, "unreadable", "a figure too much"],
    ["R1    33K 1 watt (orange-orange-yellow)", "R1", 33_000, "conflict", "value and colours differ"],
    ["R24, R25   33 ohms, 3 used", "R24", 33, "conflict", "three pieces for two names"],
    ["C1    250, mica", "C1", 250e-12, "unit-assumed", "no unit anywhere"],
  ] as const)("%s: %s", (text, name, value, code, _why) => {
    const part = partOf(text, name);
    if (value === null) expect(part.value).toBeNull();
    else expect(part.value! / value).toBeCloseTo(1, 9);
    expect(codesOf(part)).toContain(code);
  });

  test("a name met twice is marked on the later row, unless the sections number anew", () => {
    expect(readText("R1   1K\nR2   2K\nR1   3K").parts.map(codesOf)).toEqual([[], [], ["duplicate-designator"]]);
    const restarts = "Symbol   Value\n\nTUNER\nR1       1K\n\nMAIN CHASSIS\nR1       3K";
    expect(readText(restarts).parts.map((part) => [part.section, codesOf(part)])).toEqual([
      ["TUNER", []],
      ["MAIN CHASSIS", []],
    ]);
  });
});
