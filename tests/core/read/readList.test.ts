/** TABLE: the forms that parts lists come in, each as a small invented list. */
import { describe, expect, test } from "vitest";
import { codesOf, partOf, readText } from "./readText.js";

describe("layouts", () => {
  test("dotted leaders part the description from the order number", () => {
    const text = "C4     .05 mf., 200 volts ................ 12-3311\nR2     2.2 meg ......................... 22-225";
    expect(partOf(text, "C4")).toMatchObject({ value: 5e-8, volts: 200, stockNumber: "12-3311" });
    expect(partOf(text, "R2").value).toBe(2.2e6);
  });

  test("two panels side by side are read one after the other, wrapped cells included", () => {
    const text = [
      "SYM.   DESCRIPTION         PART NO.   SYM.   DESCRIPTION         PART NO.",
      "C1     .01  600V paper     C-1603     R1     470K                R-474",
      "C4A,   20-20  450V elect-  C-4420     R2     2.2M                R-225",
      " C4B   rolytic, can                   R3     22K, 2W             R-223",
    ].join("\n");
    const { parts } = readText(text);
    expect(parts.map((part) => part.designators.join())).toEqual(["C1", "C4", "R1", "R2", "R3"]);
    expect(partOf(text, "C4").sections).toHaveLength(2);
    expect(partOf(text, "R3")).toMatchObject({ value: 22_000, watts: 2 });
  });

  test("several parts in one typed line without any head", () => {
    const { parts } = readText("R1 47K        C1 .01 mfd 400V\nR2 1 meg      C2 25 mfd 25V");
    expect(parts.map((part) => part.value)).toEqual([47_000, 1e-8, 1e6, 25e-6]);
  });

  test("a drawn table repeats itself in blanks and arrows, the value with the whole row only", () => {
    const text = [
      "REF DES\tPART NO.\tDESCRIPTION\tVALUE\tTOL\tRATING",
      "R1\t3107-224\tRESISTOR\t220K\t±10%\t1/2W",
      "R2\t-105\t\t1 MEG\t\t",
      "R3\t-473\t↑\t47K\t↑\t↑",
      "R4\t\t\t\t\t",
      "C1\t4410-101\tCAPACITOR\t100 UUF\t±5%\t500V",
    ].join("\n");
    expect(partOf(text, "R2", {}, "\t")).toMatchObject({ stockNumber: "3107-105", value: 1e6 });
    expect(partOf(text, "R3", {}, "\t")).toMatchObject({
      value: 47_000,
      watts: 0.5,
      tolerance: { minus: 0.1, plus: 0.1 },
    });
    expect(partOf(text, "C1", {}, "\t")).toMatchObject({ value: 1e-10, volts: 500, watts: null });
  });

  test("a table between strokes, its head broken over two lines and its cells over several", () => {
    const text = [
      " REF     | NAME AND DESCRIPTION          | FUNCTION     | STOCK NO.",
      " SYMBOL  |                               |              |",
      "---------+-------------------------------+--------------+----------",
      " R101    | RESISTOR, fixed: composition; | Grid return, | 3RC20",
      " THRU    | 470,000 ohms ±10%; 1/2 w      | V101         |",
      " R103    |                               |              |",
    ].join("\n");
    const [part] = readText(text).parts;
    expect(part).toMatchObject({ value: 470_000, watts: 0.5, quantity: 3, lines: [4, 5, 6], use: "Grid return, V101" });
  });

  test("units in the heads of columns, headings of kinds above them", () => {
    const text = [
      "Sym.;Cap. in MF;W.V.D.C.;Res. in ohms;Watts",
      "C1;.05;400;;",
      "R1;;;470,000;1/2",
      "C2;100 MMF;500;;",
    ].join("\n");
    expect(partOf(text, "C1", {}, ";")).toMatchObject({ value: 5e-8, volts: 400, warnings: [] });
    expect(partOf(text, "R1", {}, ";")).toMatchObject({ value: 470_000, watts: 0.5 });
    expect(partOf(text, "C2", {}, ";").value).toBe(1e-10);
  });

  test("running prose: every item has all the lines it touches, and a count without designator is a part", () => {
    const text =
      "For the AMPLIFIER.  R1, R5 470K; R2 2.2 meg; R3\n100K 1 watt; R4 as R2.  Also 4 off 5000 mmf disc ceramic, 500 volts.";
    const { parts } = readText(text);
    expect(parts.map((part) => [part.designators.join(), part.value, part.section])).toEqual([
      ["R1,R5", 470_000, "AMPLIFIER"],
      ["R2", 2.2e6, "AMPLIFIER"],
      ["R3", 100_000, "AMPLIFIER"],
      ["R4", 2.2e6, "AMPLIFIER"],
      ["", 5e-9, "AMPLIFIER"],
    ]);
    expect(parts[2]!.lines).toEqual([1, 2]);
    expect(parts[4]).toMatchObject({ quantity: 4, dielectric: "ceramic", volts: 500 });
  });

  test("a list to tick off names its parts in the last column, or not at all", () => {
    const text = [
      "QUAN.  DESCRIPTION                 USED AS",
      "RESISTORS",
      "( )  2   100 ohm 1/2 watt           R12, R20",
      "( )  1   47K ohm                    R3",
    ].join("\n");
    expect(partOf(text, "R12")).toMatchObject({ value: 100, quantity: 2, watts: 0.5 });
  });

  test("Markdown: struck-through text does not count, headings are sections", () => {
    const text = [
      "## Power board",
      "| Ref | Qty | Value |",
      "|---|---|---|",
      "| R1 | 1 | ~~910k~~ 1M0 1W |",
      "## Audio board",
      "| Ref | Qty | Value |",
      "|---|---|---|",
      "| R1 | 1 | R47 |",
    ].join("\n");
    expect(readText(text).parts.map((part) => [part.section, part.value])).toEqual([
      ["Power board", 1e6],
      ["Audio board", 0.47],
    ]);
  });

  test("a German list has decimal commas and its own words", () => {
    const text = [
      "Pos.;Benennung;Wert;Belastung",
      "R1;Schichtwiderstand;4k7;0,25 W",
      "R2;dto.;10.000 Ω;0,5 W",
      "C1;Elko;50+50 µF;350/385 V",
    ].join("\n");
    expect(partOf(text, "R2", {}, ";")).toMatchObject({ value: 10_000, watts: 0.5, construction: "carbon-film" });
    expect(partOf(text, "C1", {}, ";")).toMatchObject({ volts: 350, dielectric: "electrolytic" });
  });
});

describe("what a document says once", () => {
  const noted = (note: string, line: string, name: string) => partOf(`${note}\n\nSymbol   Description\n${line}`, name);

  test.each([
    // note, line, name, what is filled, why
    [
      "All resistors 1/2 watt, 10%, composition unless otherwise specified.",
      "R1       470K",
      "R1",
      { watts: 0.5, construction: "composition" },
      "a general note",
    ],
    [
      "Resistors 1/2 watt, 10%, composition unless specified.",
      "R1       5 ohms, 7W, wirewound",
      "R1",
      { watts: 7, construction: "wirewound" },
      "the line outranks it",
    ],
    [
      "All fixed resistors 1/2 watt unless noted.",
      "R1       Volume control, 1/2 meg.",
      "R1",
      { watts: null, kind: "potentiometer" },
      "it does not reach controls",
    ],
    [
      "Composition resistors are 1/2 watt where nothing else is given.",
      "R1       Wirewound, 3300 ohms",
      "R1",
      { watts: null },
      "a note on one make",
    ],
    [
      "Condensers in mfd unless marked mmf.",
      "C1       .05, 200 V., paper",
      "C1",
      { value: 5e-8, warnings: [] },
      "a unit for bare numbers",
    ],
    [
      "Capacity: decimals are mfd, whole numbers mmfd.",
      "C1       270, mica",
      "C1",
      { value: 2.7e-10 },
      "two units by the way of printing",
    ],
    [
      "Resistors are half watt, carbon, 20 per cent, where nothing else is said.",
      "R1       47K",
      "R1",
      { watts: 0.5, tolerance: { minus: 0.2, plus: 0.2 } },
      "in words",
    ],
    ["A 5% resistor has a gold fourth band.", "R1       47K", "R1", { tolerance: null }, "an explanation is no rule"],
  ] as const)("%s / %s", (note, line, name, filled, _why) => {
    expect(noted(note, line, name)).toMatchObject(filled);
  });

  test("what a note gives says so", () => {
    expect(noted("All resistors 1/2 watt unless noted.", "R1       470K", "R1").from.watts).toEqual({
      by: "note",
      at: "line 1",
    });
  });

  test("a heading gives what it states to the parts below", () => {
    const text =
      "Symbol   Description\n\nMICA CONDENSERS, 500 VOLTS\nC1       270 mmf\n\nPRECISION RESISTORS -- 1%, deposited carbon\nR1       900 ohms";
    expect(partOf(text, "C1")).toMatchObject({ dielectric: "mica", volts: 500 });
    expect(partOf(text, "R1")).toMatchObject({ construction: "carbon-film", tolerance: { minus: 0.01, plus: 0.01 } });
  });
});

describe("what capital M means", () => {
  const list = (...values: string[]) => values.map((value, i) => `R${i + 1}     ${value}`).join("\n");

  test.each([
    [["500M", "2 MEG", "50M"], "thousand", 500_000, "meg is printed for millions and no K for thousands"],
    [["2.2M", "470K", "10K"], "million", 2.2e6, "K is printed for thousands"],
    [["100M", "250M"], "thousand", 100_000, "no resistor has a hundred megohms"],
    [["1M", "2M"], null, null, "nothing settles it"],
  ] as const)("%j: %s, R1 is %d: %s", (values, meaning, first, _why) => {
    const reading = readText(list(...values));
    expect(reading.dialect.capitalM).toBe(meaning);
    expect(reading.parts[0]!.value).toBe(first);
  });

  test("where it is not settled the list asks, and the answer reads it again", () => {
    const text = list("1M", "2M");
    expect(readText(text).questions).toHaveLength(1);
    expect(codesOf(partOf(text, "R1"))).toEqual(["ambiguous-m"]);
    expect(partOf(text, "R1", { capitalM: "thousand" })).toMatchObject({ value: 1000, warnings: [] });
  });

  test("a note settles it", () => {
    const text = `NOTE 1.  M = 1000 OHMS.\n\n${list("2M", "1.5M")}`;
    expect(readText(text).parts.map((part) => part.value)).toEqual([2000, 1500]);
  });

  test("on a capacitor it is microfarad, and said so", () => {
    expect(partOf("C1     .02M, 600 volt, paper", "C1")).toMatchObject({
      value: 2e-8,
      warnings: [{ code: "unit-assumed" }],
    });
  });
});

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
