/** TABLE: typed lists in forms of the trade, invented, each with the reading that was written by hand before it was read. */
import { describe, expect, test } from "vitest";
import { codesOf, partOf, readText } from "./readText.js";

type Expected = readonly (readonly [name: string, part: object])[];

const FORMS: readonly (readonly [form: string, text: string, expected: Expected])[] = [
  [
    "sections in capitals without blank lines or column heads",
    `ALL RESISTORS 1/2 W, TEN PERCENT, UNLESS NOTED  ALL CAPACITORS IN MMF, 500 V, UNLESS NOTED

TUNER
R1        150K                          110-154
C1        10, NPO, ±.5                  220-100
I.F. AND VIDEO
R101      Contrast control, 1K, 2W      130-1
L101      Choke, 250 uh, on 8.2K resistor`,
    [
      ["R1", { section: "TUNER", value: 150e3, watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } }],
      ["C1", { section: "TUNER", value: 10e-12, volts: 500, tolerance: { minus: 0.05, plus: 0.05 } }],
      ["R101", { section: "I.F. AND VIDEO", kind: "potentiometer", value: 1000, watts: 2, tolerance: null }],
      ["L101", { value: 250e-6, inner: [{ kind: "resistor", value: 8200 }] }],
    ],
  ],
  [
    "two panels under heads that name no designators",
    `Item   Ohms      Rating   Code           Item   Value       Rating   Code
R1     47,000             A-473          C1     .05 MFD     400 V    B-503
R2,3   1 meg     20%      A-105          C2,3   20 MFD      450 V    B-206
R4     same as R1                        C4     7-45 mmf             B-745`,
    [
      ["R1", { value: 47e3, stockNumber: "A-473" }],
      ["R3", { value: 1e6, tolerance: { minus: 0.2, plus: 0.2 } }],
      ["R4", { value: 47e3, sameAs: "R1" }],
      ["C1", { value: 0.05e-6, volts: 400, stockNumber: "B-503" }],
      ["C4", { valueMin: 7e-12, valueMax: 45e-12 }],
    ],
  ],
  [
    "two panels with heads over two lines and megohms in one",
    `          Cap.     W.V.                     Res.      Watts
  Ref.    mmf      D.C.             Ref.    megs.
  C1      250      500              R1      .47       1/2
  C2      .1 mfd   400              R2      33K       2`,
    [
      ["C1", { value: 250e-12, volts: 500 }],
      ["C2", { value: 0.1e-6 }],
      ["R1", { value: 470e3, watts: 0.5 }],
      ["R2", { value: 33e3, watts: 2 }],
    ],
  ],
  [
    "two panels under headings of kinds alone, one part of two lines",
    `CONDENSERS                              RESISTORS
C1   10 NPO ceramic                     R1   100K
C3,  .05 mfd, 200 v.                    R3   2.2 MEG
C4                                      R4   10K, 10 w., wire wound
C6   8 mfd, 450 v., elec.               R6   A.F. gain, 500K pot.`,
    [
      ["C4", { value: 0.05e-6, volts: 200, quantity: 2 }],
      ["R3", { value: 2.2e6, watts: null }],
      ["R4", { value: 10e3, watts: 10, construction: "wirewound" }],
      ["R6", { kind: "potentiometer", value: 500e3 }],
    ],
  ],
  [
    "part numbers that look like designators",
    `Item        Value                    Description             Part No.
C1          .002 mf. 600 v.          Tubular                 A-201
R3          500,000 ohms             Volume control          R-500
L1          -                        Oscillator coil         L-100`,
    [
      ["C1", { value: 0.002e-6, volts: 600, stockNumber: "A-201" }],
      ["R3", { kind: "potentiometer", value: 500e3, stockNumber: "R-500" }],
      ["L1", { kind: "inductor", value: null }],
    ],
  ],
  [
    "running text parted by commas, its note before the first part",
    `Resistors (all half-watt 10 per cent. unless stated): R1, 47 kΩ; R2, 1 MΩ; R3 and R4, each
470 kΩ ±5 per cent.; R5, same as R1.
Inductors: L1, 2.5 mH H.F. choke; L2, 15 H, 60 mA smoothing choke. T1, output transformer.`,
    [
      ["R1", { value: 47e3, watts: 0.5, tolerance: { minus: 0.1, plus: 0.1 } }],
      ["R4", { value: 470e3, tolerance: { minus: 0.05, plus: 0.05 } }],
      ["R5", { value: 47e3 }],
      ["L2", { designators: ["L2"], value: 15 }],
      ["T1", { kind: "transformer" }],
    ],
  ],
  [
    "several parts a line, close together",
    `(Preamp)
R1 68K, R2 1 Meg, R3 1.5K, R4 250K-A pot (Treble),
C1 250 pf, C2 .02-600V, C3 25-25V
(Power amp)
R5 220K, R6 470 1W, C4 = C1, C5 32+32uF 450V`,
    [
      ["R2", { section: "Preamp", value: 1e6 }],
      ["R4", { section: "Preamp", kind: "potentiometer", value: 250e3 }],
      ["C3", { section: "Preamp", value: 25e-6, volts: 25 }],
      ["R6", { section: "Power amp", value: 470, watts: 1 }],
    ],
  ],
  [
    "a check-off list with the designators last",
    `___ 2   100K 1/2W 5% (brn-blk-yel-gold)    R3 R7
___ 1   47K 1/2W (yel-vio-red)             R9
Bag 2
___ 1   10-10 mf 350V can                  C4`,
    [
      ["R7", { value: 100e3, quantity: 2, watts: 0.5, tolerance: { minus: 0.05, plus: 0.05 } }],
      ["R9", { value: 47e3 }],
      ["C4", { section: "Bag 2", volts: 350, sections: [{ farads: 10e-6 }, { farads: 10e-6 }] }],
    ],
  ],
  [
    "bare numbers under a head that says diagram number",
    `DIAG.  PART
 NO.   NO.    NAME AND DESCRIPTION                LIST
              TONE CONTROLS
 15    P12    Tone control, 500M                  1.25
              FIXED RESISTORS (carbon, 1/2 W., unless marked)
 20    K501   50M                                  .17
 22    K2     2 meg.                               .17`,
    [
      ["15", { kind: "potentiometer", value: 500e3 }],
      ["20", { kind: "resistor", value: 50e3, watts: 0.5, construction: "composition" }],
      ["22", { value: 2e6, stockNumber: "K2" }],
    ],
  ],
  [
    "unit numbers before the names, and none for both units",
    `Symbols with prefix 1 are in the transmitter, prefix 2 in the receiver; no prefix, in both.

Symbol         Qty  Description                         Rating
1-C2, 1-C3       2  Mica condenser, .0005 mfd           1200 WV
2-C2 to 2-C6     5  Paper, .1 mfd                       400 WV
C7               2  Paper, .5 mfd ±20%                  50 WV`,
    [
      ["1-C3", { section: "transmitter", value: 0.0005e-6, volts: 1200, dielectric: "mica" }],
      ["2-C4", { section: "receiver", quantity: 5, value: 0.1e-6 }],
      ["C7", { section: "transmitter+receiver", quantity: 2, warnings: [] }],
    ],
  ],
  [
    "a row broken by the end of a page, a ditto and corrections",
    `Ref.     Description                                       Part no.

R3       Resistor, carbon, 1 watt, 4.7 meg-                5-475
         ohm, 20%
R4       ditto, 2.2 megohm, 10%                            5-225
C1       Condenser, .25 mfd,                               7-254
                                                           page 9

Ref.     Description                                       Part no.

         400 volt, 20%
C3       Condenser, 40 mfd 450 V                           7-440
R6       Resistor, 2.2 meg 1/2 W (from serial 500: 1.8 meg)  5-226

AMENDMENTS
Item C3: change 40 mfd to 50 mfd.
Add: R5, 10,000 ohms, 1 W.`,
    [
      ["R4", { value: 2.2e6, watts: 1, construction: "composition", tolerance: { minus: 0.1, plus: 0.1 } }],
      ["C1", { value: 0.25e-6, volts: 400, tolerance: { minus: 0.2, plus: 0.2 } }],
      ["C3", { value: 50e-6 }],
      ["R6", { value: 1.8e6, valueMin: 1.8e6, valueMax: 2.2e6 }],
      ["R5", { value: 10e3, watts: 1 }],
    ],
  ],
];

describe.each(FORMS)("%s", (_form, text, expected) => {
  test.each(expected)("%s is read as written", (name, part) => {
    expect(partOf(text, name)).toMatchObject(part);
  });
});

test("a correction that the list contradicts is said", () => {
  const text =
    "Ref.     Description       Part no.\nC3       Paper, 40 mfd     7-440\n\nERRATA\nC3: change 40 mfd to 50 mfd.";
  expect(codesOf(partOf(text, "C3"))).toContain("conflict");
});

test("blanks that a web page made unbreakable part columns as blanks do", () => {
  const text = "R1   470K  1/2 W\nR2   1 meg  1 W".replaceAll(" ", "\u00a0");
  expect(readText(text).parts.map((part) => [part.value, part.watts])).toEqual([
    [470e3, 0.5],
    [1e6, 1],
  ]);
});
