import { beforeAll, describe, expect, test } from "vitest";
import { type Book, openBook, valuesOf } from "../../src/commands/book.js";
import { bookBasket, isPlan, orderStep } from "../../src/commands/order.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { openSampleStep } from "../../src/commands/sample/openSample.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { Host } from "../../src/hosts/host.js";
import { Model } from "../../src/hosts/library.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { listReader } from "../../src/sources/reader.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";

const { understand } = listReader(() => performance.now());
let host: Host;
let book: Book;

beforeAll(async () => {
  await registerFromSources();
  host = embeddedWorkbook(new Model()).host;
  await doStep(host, await openSampleStep(host, understand, "2026-11-25"));
  book = await openBook(host);
}, 60_000);

describe("the sample", () => {
  test("holds a set of at least 120 parts in six sections, each with an R1 of its own", () => {
    const parts = valuesOf(book.parts).filter(({ project }) => project === "HL");
    expect(parts.length).toBeGreaterThanOrEqual(120);
    expect(parts.filter(({ designator }) => designator === "R1")).toHaveLength(6);
    expect(new Set(parts.map(({ section }) => section)).size).toBe(6);
  });

  test("has three sets, three vendors and no unclear line", () => {
    expect(valuesOf(book.projects)).toHaveLength(3);
    expect(valuesOf(book.vendors)).toHaveLength(3);
    expect(valuesOf(book.lines).filter(({ became }) => became === "unclear")).toEqual([]);
  });

  test("is ordered where buying is cheapest in all, which is not always where a piece is", async () => {
    const wants = wantsOf(book);
    const basket = bookBasket(book, wants);
    const plan = await bestPlan(basket, { seconds: 10 });
    if (!isPlan(plan)) throw new Error(plan.because.join());
    await doStep(host, orderStep(book, wants, basket, plan));
    const why = valuesOf((await openBook(host)).order).map((row) => row.why ?? "");
    expect(why.filter((reason) => /cheaper, but/.test(reason))).not.toEqual([]);
  });
});
