import { describe, expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

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

  test("counts first and designators in brackets last", () => {
    const { parts } = readText(
      "3  100K 1/2W  (R1, R2, R5)\n1  500K pot. log.  (VR1)\n1  power transformer, 250-0-250V",
    );
    expect(parts.map((part) => [part.designators.join(), part.kind, part.quantity])).toEqual([
      ["R1,R2,R5", "resistor", 3],
      ["VR1", "potentiometer", 1],
      ["", "transformer", 1],
    ]);
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

describe("lines of typed tables", () => {
  test("a counted line is a part of its own though a dash stands for its designator", () => {
    const text = `Qty   Item         Value                         Location
      Condensers:
 1    electrolytic 20 mfd. 450 volt              C6
      Sundries:
 1    fuse         3 ampere                      F1
 2    sockets      octal                         -`;
    expect(readText(text).parts.map((part) => [part.kind, part.quantity])).toEqual([
      ["capacitor", 1],
      ["fuse", 1],
      ["other", 2],
    ]);
  });

  test("the rest of a description may hang under another column", () => {
    const text = `Sym.   Part         Description                                 Qty.
R60    4R105        Resistor, carbon, 1 meg,                     1
       10%, 1/2 W`;
    expect(partOf(text, "R60")).toMatchObject({ value: 1e6, watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } });
  });

  test("tabs line up with columns typed in blanks", () => {
    const text = "Ref\tValue\t\tRating\nR1, R2\t470K\t\t1/2 W\nR3      1 meg           1 W";
    expect(partOf(text, "R2")).toMatchObject({ value: 470e3, watts: 0.5 });
    expect(partOf(text, "R3")).toMatchObject({ value: 1e6, watts: 1 });
  });
});
