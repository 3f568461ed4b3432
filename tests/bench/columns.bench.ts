import { bandDecode } from "../../src/functions/bands.js";
import { drift, verdict } from "../../src/functions/bench.js";
import { lineLeak } from "../../src/functions/line.js";
import { maxVolts } from "../../src/functions/power.js";
import { nearestStd } from "../../src/functions/standards.js";
import { readValue, writeValue } from "../../src/functions/values.js";
import { provideCustomFunctions } from "../functions/customFunctions.js";
import type { Bench } from "./measure.js";

const ROWS = 10_000;

const column = (cell: (row: number) => unknown) => Array.from({ length: ROWS }, (_, row) => [cell(row)]);
const sizes = column((row) => 10 ** ((row % 60) / 10));
const texts = column((row) => `${1 + (row % 99)}K`);
const bands = column((row) => ["yellow violet orange gold", "brown black black red brown"][row % 2]);
const one = (cell: unknown) => [[cell]];

/** A column of ten thousand cells through one cell function, ranges in and ranges out. */
export const bench: Bench = {
  title: "a column of 10,000 cells through one function (goal: 50 ms)",
  rows: () => {
    provideCustomFunctions();
    const row = (what: string, run: () => unknown) => ({ what, count: ROWS, run });
    return [
      row("NEAREST_STD", () => nearestStd(sizes)),
      row("READ_VALUE", () => readValue(texts)),
      row("WRITE_VALUE", () => writeValue(sizes)),
      row("MAX_VOLTS", () => maxVolts(sizes, one(0.5), one(350))),
      row("LINE_LEAK", () => lineLeak(column(() => 1e-8))),
      row("DRIFT", () => drift(sizes, sizes)),
      row("VERDICT", () => verdict(sizes, sizes, one("±10 %"))),
      row("BAND_DECODE", () => bandDecode(bands)),
    ];
  },
};
