import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { CIRCUITS } from "./circuits.js";
import { MARKS } from "./codes.js";
import { COLOUR_CODES } from "./colours.js";
import { DOTS } from "./dots.js";
import { PREFERRED } from "./preferred.js";
import { RATINGS } from "./ratings.js";
import { SAFETY } from "./safety.js";
import type { Check } from "./table.js";
import { TEMPERATURE_CODES } from "./temperature.js";
import { TRADE } from "./trade.js";

/** The collected values, where they lie beside the project. */
const FOLDER = path.resolve("../shared/reference");
const isThere = existsSync(FOLDER);
if (!isThere) console.warn("Skipped: the collected reference values do not lie beside the project.");

/** The tables of checks in which the figures of a file have to stand. */
const USED_IN: Readonly<Record<string, readonly Check[]>> = {
  "01_preferred_numbers.csv": PREFERRED,
  "02_codes.csv": [...MARKS, ...COLOUR_CODES, ...DOTS, ...TEMPERATURE_CODES],
  "03_ratings.csv": [...RATINGS, ...TRADE],
  "04_derating.csv": RATINGS,
  "05_safety.csv": [...SAFETY, ...CIRCUITS],
  "06_worked_examples.csv": CIRCUITS,
  "07_conventions.csv": [...MARKS, ...TRADE, ...COLOUR_CODES],
  "08_drift.csv": [...RATINGS, ...TRADE],
};

/** Rows whose figure no function gives or takes, or that say a rule without a figure, by what they are of. */
const NO_FIGURE_OF_OURS: Readonly<Record<string, string>> = {
  "subset rule": "said in words; preferred.ts checks every step",
  "E48/E96 departures": "there are none, so every step of preferred.ts is the rounded power",
  "IEC 63 first proposals": "a year",
  "2016 edition changes": "said in words; the pink multiplier stands in colours.ts",
  "body-end-dot": "an order, used by each example of dots.ts",
  "body-end-dot missing colour": "said in words; an example of dots.ts has it",
  "British high-stability": "a grade without a figure",
  "old ERIE marking": "figures in the condition; codes.ts checks them as farads of the ERIE mark",
  "mica 6-dot reading order": "an order, used by each example of dots.ts",
  "mica 6-dot first dot": "said in words",
  "mica characteristic class E": "drift of a class: the functions give its letter",
  "mica characteristic class I": "no dot of ours has the letter I",
  "mica characteristic class J": "no dot of ours has the letter J",
  "capacitor colour generic table": "figures in the condition; dots.ts checks volts and letters by code",
  "lead diameter": "no function asks for leads",
  "rated voltage": "a formula, which ratings.ts checks as the smaller of the root and the limit",
  "critical resistance definition": "a definition, which ratings.ts checks as critical ohms",
  "metal film body L x D, lead": "bodies of one maker's series, which BODY_FITS takes as given",
  "metal film (second maker) limiting voltage; body": "a second maker; MAX_VOLTS takes the body's volts as given",
  "warm-up peak in receivers":
    "the page's figure has its rectifier's drop in it; trade.ts checks the peak without load",
  "standards that exist": "names and years",
  "derating curve shape": "a shape, which ratings.ts checks as shares carried at temperatures",
  "capacitor voltage ratio definition": "a definition, which ratings.ts checks as the stress of dc and ac together",
  "impulse test voltage": "X3 and Y3: dropped from the standard, no figure",
  "impulse reduction": "a formula, which safety.ts checks as impulse test, volts peak",
  "insulation bridged": "said in words; safety.ts checks where one part bridges double insulation",
  "substitution rule": "said in words; safety.ts checks whether the class serves there",
  "where used": "said in words; safety.ts checks both places",
  "network, 12 V energies": "the unit column holds a total; circuits.ts checks each, and names the print's 130 for 128",
  "tolerance containment": "figures in the condition; circuits.ts checks whether the window holds",
  "capacitor charge": "a definition, which circuits.ts checks as microcoulombs",
  "example in same figure": "figures in the condition; trade.ts checks the notation",
  "KC / MC / cps": "units without a figure",
  "composition resistor tolerance": "figures in the condition; colours.ts checks them",
  "RMA -> RTMA -> RETMA -> EIA": "names",
  "EIA RS-279": "a year",
  "IEC 62 first edition": "a year",
  "noninsulated resistor": "said in words",
  "which values drift in sets": "hearsay about sets",
  "NOS restored by baking": "a place in a standard",
  "paper vs film": "said in words",
  "selenium replacement": "said in words; ratings.ts checks SELENIUM_RESISTOR on worked cases",
};

type Row = { readonly quantity: string; readonly condition: string; readonly value: string; readonly status: string };

describe.skipIf(!isThere).each(Object.entries(USED_IN))("collected values: %s", (file, checks) => {
  test("each that was read or worked out stands in a check, or says why it does not", () => {
    const known = figuresIn(checks.map(({ value, given }) => [value, given]));
    const unused = rowsOf(file).filter(
      ({ quantity, status, value }) =>
        /SEEN|COMPUTED/.test(status) && !(quantity in NO_FIGURE_OF_OURS) && !isUsed(figuresIn(value), known),
    );
    expect(unused.map(({ quantity, condition, value }) => `${quantity} | ${condition} | ${value}`)).toEqual([]);
  });
});

test.skipIf(!isThere)("no reason stands for a row that is not there", () => {
  const quantities = new Set(Object.keys(USED_IN).flatMap((file) => rowsOf(file).map(({ quantity }) => quantity)));
  expect(Object.keys(NO_FIGURE_OF_OURS).filter((quantity) => !quantities.has(quantity))).toEqual([]);
});

function rowsOf(file: string): readonly Row[] {
  const text = readFileSync(path.join(FOLDER, file), "utf8");
  return Papa.parse<Row>(text, { header: true, skipEmptyLines: true }).data;
}

/** Every figure in numbers and texts, without its power of ten: sources and checks count in different units. */
function figuresIn(anything: unknown): readonly number[] {
  if (typeof anything === "number") return [withoutPower(anything)];
  if (typeof anything === "string")
    return [...anything.matchAll(/\d[\d.]*(e[-+]?\d+)?/gi)].map(([n]) => withoutPower(Number(n)));
  if (typeof anything === "object" && anything !== null) return Object.values(anything).flatMap(figuresIn);
  return [];
}

function withoutPower(number: number): number {
  return number === 0 ? 0 : Number(Math.abs(number).toExponential(9).split("e")[0]);
}

/** Whether each figure of a row is one of the checks', as far as three figures go; a row without figures is not used. */
function isUsed(figures: readonly number[], known: readonly number[]): boolean {
  const isKnown = (figure: number) => known.some((each) => Math.abs(each - figure) <= 0.006 * Math.max(each, figure));
  return figures.length > 0 && figures.every(isKnown);
}
