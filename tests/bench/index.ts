/**
 * `npm run bench [-- WORD]`: measures every module `tests/bench/*.bench.ts` (or those whose name has WORD in it) in one
 * run, and prints one table. Compare the ratios of one run; seconds differ from machine to machine.
 *
 * A module exports `bench`, a `Bench` of `measure.ts`:
 *
 *     export const bench: Bench = {
 *       title: "nearest standard value",
 *       rows: () => [
 *         { what: "a scan of the whole series", count: 1000, run: () => wanted.map(byScan) },
 *         { what: "nearest", count: 1000, run: () => wanted.map(byPlace), comparedWith: "a scan of the whole series" },
 *       ],
 *     };
 *
 * `count` is how many things one run does; `run` may be async.
 */
import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { type Bench, measure } from "./measure.js";

const [word = ""] = process.argv.slice(2);
const modules = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".bench.ts") && file.includes(word))
  .sort();

print(["", "median", "p95", "rate", "ratio"]);
for (const file of modules) {
  const { bench } = (await import(pathToFileURL(path.join(import.meta.dirname, file)).href)) as { bench: Bench };
  console.log(`\n${bench.title}`);
  const rates = new Map<string, number>();
  for (const row of await bench.rows()) {
    const measured = await measure(row);
    rates.set(row.what, measured.rate);
    const ratio = row.comparedWith ? `x ${(measured.rate / rates.get(row.comparedWith)!).toPrecision(3)}` : "";
    print([`  ${row.what}`, seconds(measured.median), seconds(measured.p95), perSecond(measured.rate), ratio]);
  }
}

function print([what = "", ...figures]: string[]): void {
  console.log(what.padEnd(64) + figures.map((figure) => figure.padStart(13)).join(""));
}

function seconds(value: number): string {
  return value < 1 ? `${(value * 1000).toPrecision(3)} ms` : `${value.toPrecision(3)} s`;
}

function perSecond(rate: number): string {
  if (rate >= 1e6) return `${(rate / 1e6).toPrecision(3)} M/s`;
  return rate >= 1e3 ? `${(rate / 1e3).toPrecision(3)} k/s` : `${rate.toPrecision(3)} /s`;
}
