import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { wholeJob } from "../../src/commands/wholeJob.js";
import type { PartsRow } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { listReader } from "../../src/sources/reader.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";

const HERE = import.meta.dirname;
const SHARED = path.resolve(HERE, "../../../shared/lists");
const CATALOGUE = path.resolve(SHARED, "../offers/01-kelverdine/catalogue.csv");

beforeAll(async () => {
  await registerFromSources();
});

const file = (name: string) => ({ name: path.basename(name), bytes: new Uint8Array(readFileSync(name)) });

/** The whole job with one list and one vendor's list, without a browser. */
async function jobOf(list: string, offers: string) {
  const { host } = embeddedWorkbook(new Model());
  const files = {
    list: file(list),
    target: { short: "A", set: "a set", document: path.basename(list) },
    era: null,
    offers: [{ vendor: "Shop", file: file(offers) }],
    listDate: "2026-11-25",
  };
  const services = {
    ...listReader(() => performance.now()),
    plan: (basket: Parameters<typeof bestPlan>[0]) => bestPlan(basket, { seconds: 5 }),
  };
  const { done, plan } = await wholeJob(host, files, services);
  return { done, plan, book: await openBook(host) };
}

const inOneLine = (row: PartsRow) =>
  [
    row.section,
    row.designator,
    row.action,
    row.newValue,
    row.newTolerance,
    row.newWatts,
    row.newVolts,
    row.newType,
    row.offer,
  ]
    .map((cell) => cell ?? "")
    .join(";");

describe("the whole job", () => {
  const folders = readdirSync(HERE, { withFileTypes: true }).filter((each) => each.isDirectory());

  test.each(folders.map(({ name }) => name))("%s comes out as a person has read it over", async (name) => {
    const at = (part: string) => path.join(HERE, name, part);
    const { book } = await jobOf(at("list.txt"), at("offers.csv"));
    const bought = valuesOf(book.order).map((row) =>
      [row.stockNumber, row.units, row.cost?.toFixed(2), row.forWhom].join(";"),
    );
    const found = `${[...valuesOf(book.parts).map(inOneLine), "", ...bought].join("\n")}\n`;
    if (process.env.UPDATE) writeFileSync(at("order.csv"), found);
    expect(found).toBe(readFileSync(at("order.csv"), "utf8"));
  });
});

const lists = existsSync(SHARED)
  ? readdirSync(SHARED, { recursive: true, encoding: "utf8" }).filter((name) =>
      /(^|\/)list\.(txt|csv|tsv|md)$/.test(name),
    )
  : [];

describe.skipIf(lists.length === 0)("every list that lies beside the project", () => {
  test.each(lists)("%s goes from its lines to an order, none of them lost, each part with an answer", async (name) => {
    const list = path.join(SHARED, name);
    const { book } = await jobOf(list, CATALOGUE);
    const filled = readFileSync(list, "utf8")
      .split("\n")
      .filter((line) => line.trim() !== "");
    expect(valuesOf(book.lines)).toHaveLength(filled.length);
    const parts = valuesOf(book.parts);
    expect(parts.length).toBeGreaterThan(5);
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    expect(parts.filter(({ action }) => !/^(keep|test|replace|lift|check|ask)$/.test(action ?? ""))).toEqual([]);
  });
});

if (lists.length === 0) console.log("The lists beside the project are not here: the job with each of them is skipped.");
