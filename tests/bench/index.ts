/**
 * `npm run bench [-- WORD]`: measures every module `tests/bench/*.bench.ts` (or those whose name has WORD in it) in one
 * run, and prints one table. Compare the ratios of one run; seconds differ from machine to machine, and most of all on
 * a busy one. What a row is to reach stands at its end, met or missed; the last line counts them.
 *
 * A module exports `bench`, a `Bench` of `measure.ts`:
 *
 *     export const bench: Bench = {
 *       title: "nearest standard value",
 *       rows: () => [
 *         { what: "a scan of the whole series", count: 1000, run: () => wanted.map(byScan) },
 *         { what: "nearest", count: 1000, run: () => wanted.map(byPlace), comparedWith: "a scan of the whole series",
 *           goal: { ratio: 100 } },
 *       ],
 *     };
 *
 * `count` is how many things one run does; `run` may be async. A row may tell `seconds` of its own in place of `run`. What a
 * module opened ends with the process.
 */
import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { type Bench, type Goal, isMet, type Measured, measure, type Row } from "./measure.js";

const [word = ""] = process.argv.slice(2);
const modules = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith(".bench.ts") && file.includes(word))
  .sort();

const start = performance.now();
const goals: { readonly what: string; readonly isMet: boolean }[] = [];
print(["", "median", "p95", "rate", "ratio", "goal"]);
for (const file of modules) {
  const { bench } = (await import(pathToFileURL(path.join(import.meta.dirname, file)).href)) as { bench: Bench };
  console.log(`\n${bench.title}`);
  const rates = new Map<string, number>();
  for (const row of await bench.rows()) await show(row, rates);
}
summary();
process.exit();

async function show(row: Row, rates: Map<string, number>): Promise<void> {
  const measured = await measure(row);
  rates.set(row.what, measured.rate);
  const ratio = row.comparedWith ? measured.rate / rates.get(row.comparedWith)! : null;
  const times = ratio === null ? "" : `x ${ratio.toPrecision(3)}`;
  const { median, p95, rate } = measured;
  print([`  ${row.what}`, seconds(median), seconds(p95), perSecond(rate), times, verdict(row, measured, ratio)]);
}

function verdict({ what, goal }: Row, measured: Measured, ratio: number | null): string {
  if (!goal) return "";
  const reached = isMet(goal, measured, ratio);
  goals.push({ what, isMet: reached });
  return `${goalText(goal)} ${reached ? "met" : "MISSED"}`;
}

function goalText(goal: Goal): string {
  if ("p95" in goal) return `p95 ${seconds(goal.p95)}`;
  if ("median" in goal) return seconds(goal.median);
  return "rate" in goal ? perSecond(goal.rate) : `x ${goal.ratio}`;
}

function summary(): void {
  const missed = goals.filter((goal) => !goal.isMet).map(({ what }) => what);
  const names = missed.length > 0 ? `; missed: ${missed.join(", ")}` : "";
  const took = Math.round((performance.now() - start) / 1000);
  console.log(`\n${goals.length - missed.length} of ${goals.length} goals met${names}. All this took ${took} s.`);
}

function print([what = "", ...figures]: string[]): void {
  const widths = [13, 11, 11, 9, 20];
  console.log(what.padEnd(62) + figures.map((figure, i) => figure.padStart(widths[i]!)).join(""));
}

function seconds(value: number): string {
  return value < 1 ? `${Number((value * 1000).toPrecision(3))} ms` : `${Number(value.toPrecision(3))} s`;
}

function perSecond(rate: number): string {
  if (rate >= 1e6) return `${Number((rate / 1e6).toPrecision(3))} M/s`;
  return rate >= 1e3 ? `${Number((rate / 1e3).toPrecision(3))} k/s` : `${Number(rate.toPrecision(3))} /s`;
}
