/** TABLE: lists in tables, invented, each with the reading that was written by hand before it was read. */
import { describe, expect, test } from "vitest";
import { codesOf, partOf, readText } from "./readText.js";

type Expected = readonly (readonly [name: string, part: object])[];

const FORMS: readonly (readonly [form: string, separator: string, text: string, expected: Expected])[] = [
  [
    "a German table with blanks in the designators",
    ";",
    `Widerstände ohne Angabe: Kohleschicht 0,5 W ±5 %;;;;;
Kennz.;Menge;Bezeichnung;Daten;Sach-Nr.;Bem.
R 1;1;Widerstand;2,2 kΩ;400.01;
R 3, R 4;2;Widerstand;470 Ω ±1 %;400.03;Metallschicht
R 8;1;wie R 1;;400.01;
C 5 – C 7;3;Kerko;10 nF +50 -20 % 250 V;410.05;
C 8;1;Trimmer;4/20 pF;410.06;
Tr 1;1;Netztrafo;220 V / 6,3 V;430.01;`,
    [
      ["R1", { value: 2200, watts: 0.5, construction: "carbon-film" }],
      ["R4", { value: 470, construction: "metal-film", tolerance: { minus: 0.01, plus: 0.01 } }],
      ["R8", { value: 2200, sameAs: "R1" }],
      ["C6", { value: 10e-9, quantity: 3, tolerance: { minus: 0.2, plus: 0.5 } }],
      ["C8", { valueMin: 4e-12, valueMax: 20e-12 }],
      ["Tr1", { kind: "transformer" }],
    ],
  ],
  [
    "order numbers that look like designators, and running numbers before them",
    ";",
    `Lfd. Nr.;Schaltzeichen;Gegenstand;Elektrische Werte;Typ / Ausführung;Lagernummer
1;C1;Kondensator;0,22 µF 250 V- ±20%;MKS;R-1001
2;R1;Schichtwiderstand;1,5 kΩ 0,5 W ±5%;;R-2001
3;R2;desgl.;22 kΩ 0,25 W;;R-2002`,
    [
      ["C1", { value: 0.22e-6, volts: 250, dielectric: "polyester", stockNumber: "R-1001" }],
      ["R2", { value: 22e3, watts: 0.25, construction: "carbon-film" }],
    ],
  ],
  [
    "variants in columns, and heads that say two things",
    "\t",
    `FIND NO.	QTY REQD -11	QTY REQD -21	REF DESIG	NOMENCLATURE OR DESCRIPTION	PART NO.
				NOTES: 1. RESISTORS 1/4W ±1% METAL FILM U.O.S.
1	4	4	R1 THRU R4	RESISTOR, 10.0K ±0.05% WW	B100-1
4	AR	AR	R6	RESISTOR, FACTORY SELECT, 100 TO 1000 OHMS, 499 NOM	B100-4
6	2	2	C1,C2	CAPACITOR, .22 UF ±5% 100V POLYCARBONATE	B200-1
12	3	3	-	TERMINAL, INSULATED	B900-1`,
    [
      ["R2", { value: 10e3, quantity: 4, construction: "wirewound" }],
      ["R6", { value: 499, valueMin: 100, valueMax: 1000, valueState: "selected-in-test", watts: 0.25 }],
      ["C2", { value: 0.22e-6, dielectric: "film", volts: 100 }],
    ],
  ],
  [
    "units in the heads, with their prefix before them",
    "\t",
    `Ref.	Description	Value, MFD.	Value, K ohms	Volts	Wattage	Limits, %
C1	Paper	.1		200
C4	Ceramic	47 MMF		500		10
R1	Carbon		470		1/2	10
R3	Wire wound		.15		10	5
R6	Carbon		3.3 MEG		1/2	20`,
    [
      ["C1", { value: 0.1e-6, volts: 200 }],
      ["C4", { value: 47e-12 }],
      ["R1", { value: 470e3, watts: 0.5 }],
      ["R3", { value: 150, watts: 10 }],
      ["R6", { value: 3.3e6 }],
    ],
  ],
  [
    "two heads that could name the parts, and a unit by its sign alone",
    ",",
    `Symbol,Kind,Capacitance µF,Resistance Ω,Watts,Volts,+/- %,Circuit
C1,mica,0.0001,,,500,5,IF
R1,carbon,,470000,0.5,,10,AVC
R2,carbon,,47 k,1,,10,Plate`,
    [
      ["C1", { value: 100e-12, volts: 500, use: "IF", tolerance: { minus: 0.05, plus: 0.05 } }],
      ["R1", { value: 470e3, watts: 0.5 }],
      ["R2", { value: 47e3, use: "Plate" }],
    ],
  ],
  [
    "two tables side by side in one sheet",
    "\t",
    `Ref	Value	Rating	Ref	Value	Rating
R1	47K	1W	C1	.1 MFD	400V
R2	1 MEG	1/2W	C2	100 PF	500V`,
    [
      ["R2", { value: 1e6, watts: 0.5 }],
      ["C1", { value: 0.1e-6, volts: 400 }],
      ["C2", { value: 100e-12, volts: 500 }],
    ],
  ],
];

describe.each(FORMS)("%s", (_form, separator, text, expected) => {
  test.each(expected)("%s is read as written", (name, part) => {
    expect(partOf(text, name, {}, separator)).toMatchObject(part);
  });
});

test("a dash under the designators is no name, and joins no row to the one above", () => {
  const text = "Ref\tDescription\tQty\nCR1\tDIODE, ZENER, 6.2V\t1\n-\tTERMINAL, INSULATED\t3";
  const { parts } = readText(text, {}, "\t");
  expect(parts.map((part) => [part.designators.join(), part.kind, part.quantity])).toEqual([
    ["CR1", "rectifier", 1],
    ["", "other", 3],
  ]);
});

test("bullets below a table are parts where their names are new, else remarks on a part", () => {
  const text = `| Ref | Value | Notes |
|---|---|---|
| R1 | 100k | |

* R10: 1k 5W wirewound
* R1: 22k nominal`;
  expect(partOf(text, "R10")).toMatchObject({ value: 1000, watts: 5, construction: "wirewound" });
  expect(partOf(text, "R1").value).toBe(22e3);
});

describe("cans whose marks stand behind their sections", () => {
  test("each mark goes with the figures before it", () => {
    const can = partOf("C201    Can: 80 mfd @ 500V (■), 40 mfd @ 475V (▲)", "C201");
    expect(can.sections).toEqual([
      { suffix: "square", farads: 80e-6, volts: 500 },
      { suffix: "triangle", farads: 40e-6, volts: 475 },
    ]);
  });
});

test("a coil's number without unit is no value, and said so", () => {
  const coil = partOf("Ref|Value\nL1|2.5", "L1", {}, "|");
  expect(coil.value).toBeNull();
  expect(codesOf(coil)).toEqual(["unreadable"]);
});

test.each<[string, object]>([
  ["R1, R2|2 x 100K, 1 W", { value: 100e3, quantity: 2 }],
  ["R5|RV4LAYSA252A", { kind: "potentiometer", value: 2500 }],
  ["R6|1'500 Ω, Draht", { value: 1500, construction: "wirewound" }],
  ["R3|3·3kΩ", { value: 3300 }],
  ["C4|·005µF", { value: 0.005e-6 }],
  ["R4|SAT, 100 TO 10K OHM", { valueMin: 100, valueMax: 10e3 }],
  ["C2|100 cm", { value: 1.112650056e-10 }],
  ["L1|4u7", { value: 4.7e-6 }],
  ["C3|2 sect., 0.5 uf ea., 400 v", { volts: 400, sections: [{ farads: 0.5e-6 }, { farads: 0.5e-6 }] }],
  ["TR1|Transistor", { kind: "other" }],
])("%s is read as %j (common practice; a centimetre of capacitance is 1.112650056 pF)", (row, expected) =>
  expect(partOf(`Ref|Description\n${row}`, row.slice(0, row.search(/[,|]/)), {}, "|")).toMatchObject(expected),
);

describe("faults that are read as printed and said", () => {
  test.each([
    // list, name, value, code, why
    ["R1   250M  1/2 W\nR2   47K  1/2 W", "R1", 250e6, "implausible-value", "K means M is a million: too large"],
    ["R1   47K  1/2 W (yel-vio-red)", "R1", 47e3, "conflict", "the colours say 4.7K"],
  ])("%s: %s is %d with %s (%s)", (text, name, value, code) => {
    const part = partOf(text, name);
    expect(part.value).toBe(value);
    expect(codesOf(part)).toContain(code);
  });
});
