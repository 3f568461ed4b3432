/** TABLE: notation, drift, leakage and rectifiers: what published pages of the trade state. */
import {
  drift,
  electrolyticLeakAmps,
  impulseVolts,
  leakByCharge,
  readMeasure,
  readTolerance,
  readValue,
  seleniumResistor,
  type ValueHints,
  warmupPeak,
} from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const NOTATION = "radio.codegods.ca/tech, 1930s schematic notation";
const CONSTRUCTED = "constructed from the rules above";

const value =
  (hints: ValueHints = {}) =>
  (text: string) =>
    readValue(text, hints).value;

const READING: readonly Check[] = [
  ...table({ of: "ohms where M is thousand", source: NOTATION }, value({ kind: "resistor", capitalM: "thousand" }), [
    ["10M", 10_000],
  ]),
  ...table({ of: "ohms", source: NOTATION, locator: "figure 1" }, value({ kind: "resistor" }), [
    ["22 k", 22_000],
    ["2.2 meg", 2_200_000],
    ["270 ohm", 270],
  ]),
  ...table({ of: "farads of old diagrams", source: `${NOTATION}; pupman list 2012` }, value({ kind: "capacitor" }), [
    ["0.1mF", 0.1e-6],
    ["120 mmF", 120e-12],
  ]),
  ...table({ of: "farads printed on mica", source: "pupman list 2012, message 00132" }, value({ kind: "capacitor" }), [
    [".005 MFD", 0.005e-6],
  ]),
  ...table({ of: "farads", source: "jefftranter.blogspot 2014; awasa.org.za" }, value({ kind: "capacitor" }), [
    ["1 uuF", 1e-12],
    ["1 uufd", 1e-12],
  ]),
  ...table(
    { of: "watts in the earliest radios", source: "sx28.info", within: 2e-3 },
    (text: string) => readMeasure(text, "watt"),
    [["1/3 W", 0.333]],
  ),
  ...table(
    { of: "ohms where M is thousand", source: CONSTRUCTED, status: "computed" },
    value({ kind: "resistor", capitalM: "thousand" }),
    [["500M", 500_000]],
  ),
  ...table(
    { of: "ohms where M is million", source: CONSTRUCTED, status: "computed" },
    value({ kind: "resistor", capitalM: "million" }),
    [
      ["500M", 500_000_000],
      [".5 MEG", 500_000],
      ["1/2 meg", 500_000],
      ["4K7", 4_700],
    ],
  ),
  ...table({ of: "farads", source: CONSTRUCTED, status: "computed" }, value({ kind: "capacitor" }), [
    ["250 mmf", 250e-12],
    ["8 mf", 8e-6],
    [".02 M", 0.02e-6],
  ]),
  ...table(
    { of: "tolerance of the colour word", source: "RETMA REC-116 / MIL-R-11A" },
    (word: string) => readTolerance(word).plus,
    [
      ["gold", 0.05],
      ["silver", 0.1],
      ["none", 0.2],
    ],
  ),
  ...table(
    { of: "low and high of GMV", source: "EIA; signalpro; sharps.lv" },
    (word: string) => [-readTolerance(word).minus || 0, readTolerance(word).plus],
    [["GMV", [0, 1]]],
  ),
];

const DRIFT: readonly Check[] = [
  ...table(
    { of: "drift of unused 100 k composition parts", source: "a collectors' mailing list, July 2018", within: 0.02 },
    (reading: number) => drift({ nominal: 100_000, reading }),
    [
      [107_000, 0.07],
      [122_000, 0.22],
    ],
  ),
  ...table(
    {
      of: "drift of an unused 4.7 k 5 % part",
      source: "ik1zyw.blogspot 30 Jan 2024: about 5.4 k, between +10 and +20 %",
    },
    (reading: number) => {
      const ratio = drift({ nominal: 4_700, reading });
      return ratio > 0.1 && ratio < 0.2;
    },
    [[5_400, true]],
  ),
];

const SUPPLIES: readonly Check[] = [
  ...table(
    {
      of: "volts peak of a 385 V winding without load (the page says 525 V with its rectifier)",
      source: "University of Queensland physics museum, electrolytic capacitor",
      within: 1e-3,
    },
    (windingVolts: number) => warmupPeak({ windingVolts, lineVolts: 117, designVolts: 117 }),
    [[385, 544]],
  ),
  ...table(
    {
      of: "ohms in place of selenium",
      source: "Bonkowski's method, worked out in the reference files",
      status: "computed",
      within: 1e-3,
    },
    ([plates, amperes]: readonly [number, number]) => seleniumResistor({ plates, amperes }).ohms,
    [
      [[5, 0.065], 66.15],
      [[6, 0.1], 53],
      [[6, 0.2], 26.5],
    ],
  ),
  ...table(
    {
      of: "watts in place of selenium",
      source: "Bonkowski's method, worked out in the reference files",
      status: "computed",
      within: 1e-3,
    },
    ([plates, amperes]: readonly [number, number]) => seleniumResistor({ plates, amperes }).watts,
    [
      [[5, 0.065], 0.2795],
      [[6, 0.1], 0.53],
      [[6, 0.2], 1.06],
    ],
  ),
  ...table(
    { of: "milliamperes an electrolytic may leak", source: "JAN-C-62 as quoted on a radio list", within: 1e-6 },
    ([farads, volts]: readonly [number, number]) => electrolyticLeakAmps({ farads, volts })! * 1e3,
    [[[20e-6, 450], 1.1]],
  ),
  ...table(
    {
      of: "microamperes an electrolytic may leak by 0.05 CV + 250 µA",
      source: "a stockist's limit of 1968 as quoted at electrojumble",
    },
    ([farads, volts]: readonly [number, number]) =>
      leakByCharge({ farads, volts }, { perCoulomb: 0.05, plusAmperes: 250e-6 }) * 1e6,
    [[[20e-6, 450], 700]],
  ),
  ...table(
    {
      of: "volts peak in service that a class X1 part outlives",
      source: "a capacitor maker's safety page; film-capacitor.com",
    },
    (safetyClass: string) => impulseVolts({ safetyClass, farads: 1e-7 }),
    [
      ["X1", 4000],
      ["X2", 2500],
    ],
  ),
];

/** All checks on facts of the trade. */
export const TRADE = [...READING, ...DRIFT, ...SUPPLIES];
