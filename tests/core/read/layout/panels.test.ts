import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

test("a lone stroke between panels bounds them", () => {
  const text = `REF.DES.  VALUE   TOL  WATT  | REF.DES.  VALUE     TOL   VOLT  TYPE
R1        10K     1%   1/4   | C1        100 PF    5%    500   MICA
R2        SAME AS R1         | C2        .01 UF    GMV   500   CER`;
  expect(partOf(text, "R1")).toMatchObject({ value: 10e3, watts: 0.25, volts: null });
  expect(partOf(text, "C2")).toMatchObject({ value: 0.01e-6, volts: 500, tolerance: { minus: 0, plus: 1 } });
});

test("a head that could name the parts but describes them opens no panel", () => {
  const text = `Ref.      Component         Value
R1        Carbon, 1/4 W     150 k ±10 %
C1        Mica, 350 V       220 pF ±2 %`;
  expect(partOf(text, "R1")).toMatchObject({ value: 150e3, watts: 0.25 });
  expect(partOf(text, "C1")).toMatchObject({ value: 220e-12, volts: 350, dielectric: "mica" });
});

test("part numbers that look like designators open no panel under heads over three lines", () => {
  const text = `CIRCUIT                                   RATED    TOL.            FIG.
SYMBOL     VALUE          TYPE            VOLTS/   (PER    STOCK   AND
                                          WATTS    CENT)   NO.     ITEM
C-101      100 MMF        MICA            500      5       A4410   7-1
R-101      470 K          COMPOSITION     1/2      10      A1474   7-20`;
  expect(readText(text).parts).toHaveLength(2);
  expect(partOf(text, "C-101")).toMatchObject({ volts: 500, watts: null, stockNumber: "A4410" });
  expect(partOf(text, "R-101")).toMatchObject({ volts: null, watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } });
});

test("a heading above the next pair of panels is no piece of the panel before", () => {
  const { parts } = readText(`(A) CONVERTER CHASSIS
Resistors                          Condensers
R-1    20K ohm    1/3 W.           C-1    30 mmf.      Ceramic

(B) AUDIO CHASSIS
Resistors                          Condensers
R-1    250K ohm   1/3 W.           C-1    .02 mfd.     600 V.`);
  const where = parts.map((part) => `${part.designators[0]} ${part.section}`);
  expect(where).toEqual(["R-1 CONVERTER CHASSIS", "C-1 CONVERTER CHASSIS", "R-1 AUDIO CHASSIS", "C-1 AUDIO CHASSIS"]);
});

test("two parts a line with a sign of equality need no head", () => {
  const text = `CAPACITOR VALUES                     RESISTOR VALUES
C1 = .0005 variable                  R1 = 2,200,000
C4 = 100 mmf.                        R6 = 500,000 variable`;
  expect(readText(text).parts).toHaveLength(4);
  expect(partOf(text, "R1").value).toBe(2.2e6);
  expect(partOf(text, "C4").value).toBe(100e-12);
});

test("sections side by side are two panels, though each numbers from one", () => {
  const { parts } = readText(`TUNER CHASSIS PARTS              AUDIO CHASSIS PARTS
R1   470K                        R1   1 meg
C1   47 mmf                      C1   50 mfd 6V`);
  expect(parts.map((part) => [part.section, part.value])).toEqual([
    ["TUNER CHASSIS", 470e3],
    ["TUNER CHASSIS", 47e-12],
    ["AUDIO CHASSIS", 1e6],
    ["AUDIO CHASSIS", 50e-6],
  ]);
});

test("panels may stand side by side in a drawn table", () => {
  const text = `| REF | VALUE   | RATING | TOL | REF | VALUE   | RATING | TOL |
|-----|---------|--------|-----|-----|---------|--------|-----|
| R1  | 1K      | 1/2W   | 10% | C1  | 100pF   | 500V   | 5%  |
| R2  | "       | "      | "   | C2  | 0.1uF   | 250V   | 20% |`;
  expect(partOf(text, "R2")).toMatchObject({ value: 1000, watts: 0.5, volts: null });
  expect(partOf(text, "C1")).toMatchObject({ value: 100e-12, volts: 500, tolerance: { minus: 0.05, plus: 0.05 } });
});

test("the halves of heads broken over two lines are no headings of sections, though part numbers stand below", () => {
  const text = `Desig-                                       Maker's
nation    Function       Description         Part No.
C-1       Coupling       50 mmf., mica       1468
C-2 to    Bypass         .01 mf., mica       1467
C-6
J-1       Phones         Jack                J-1`;
  const { parts } = readText(text);
  expect(parts.map(({ section }) => section)).toEqual([null, null, null]);
  expect(parts[1]).toMatchObject({ designators: ["C-2", "C-3", "C-4", "C-5", "C-6"], value: 0.01e-6 });
});
