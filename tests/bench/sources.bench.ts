import Papa from "papaparse";
import { readOffers } from "../../src/core/index.js";
import { readSource } from "../../src/sources/readSource.js";
import type { Bench } from "./measure.js";

const HEADS = "Stock No,Description,Status,Stock,Price 1,Price 10,Technology";
const VALUES = ["100", "470", "1.5K", "22K", "100K", "1M"];

/** An invented catalogue of so many rows, one cell of each in quotes. */
function catalogue(rows: number): string {
  const row = (i: number) =>
    `${100_000 + i},RES ${VALUES[i % 6]} OHM 5% ${(i % 3) + 1}W AXIAL,Active,${i % 5000},0.31,0.232,"Metal film, axial"`;
  return [HEADS, ...Array.from({ length: rows }, (_, i) => row(i))].join("\n");
}

const MILLION = 1_000_000;
const SOME = 10_000;

/** A vendor's file: the library alone, our lines with their numbers, and offers out of them. */
export const bench: Bench = {
  title: "vendors' files",
  rows: async () => {
    const text = catalogue(MILLION);
    const bytes = new TextEncoder().encode(text);
    const { lines } = await readSource("some.csv", new TextEncoder().encode(catalogue(SOME)));
    return [
      { what: "papaparse alone, rows", count: MILLION, run: () => Papa.parse(text).data.length },
      {
        what: "readSource, rows with their line numbers",
        count: MILLION,
        run: async () => (await readSource("big.csv", bytes)).lines.length,
        comparedWith: "papaparse alone, rows",
      },
      { what: "readOffers, rows", count: SOME, run: () => readOffers(lines).offers.length },
    ];
  },
};
