import { beforeAll, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { sayStep, unsayStep } from "../../src/commands/decideRows.js";
import { driftOf } from "../../src/commands/drift.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { overviewOf } from "../../src/commands/overview.js";
import { paperOf } from "../../src/commands/papers.js";
import { leadsBackStep, logReadingsStep } from "../../src/commands/readings.js";
import { doStep } from "../../src/commands/step.js";
import { readReadings } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

/** A list whose first two parts are one: the second row names the first. */
async function paired() {
  const { host, model } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  const { parts } = await openBook(host);
  const write = (key: "sameAs" | "action", at: number, text: string) =>
    host.write([{ kind: "cells", sheet: "Parts", row: at, column: parts!.places[key]!, cells: [[text]] }], "typed");
  const [one, other] = parts!.rows;
  return {
    host,
    model,
    write,
    at: [one!.at, other!.at] as const,
    join: () => write("sameAs", other!.at, one!.values.id!),
  };
}

test("a part written down as the same as another row's is ordered and counted once", async () => {
  const { host, write, at, join } = await paired();
  for (const each of at) await write("action", each, "replace");
  const before = await openBook(host);
  await join();
  const after = await openBook(host);
  const askers = (book: typeof before) => {
    const { demands, notAsked } = wantsOf(book);
    return new Set([...demands.map(({ part }) => part), ...notAsked.map(({ row }) => row.id)]);
  };
  expect(askers(before).size - askers(after).size).toBe(1);
  for (const count of ["parts", "decided", "toFind"] as const)
    expect([count, overviewOf(before)[count] - overviewOf(after)[count]]).toEqual([count, 1]);
  expect(paperOf(before, null, "fit").rows.length - paperOf(after, null, "fit").rows.length).toBe(1);
});

test("what the user says at one of its rows holds at the other, and is taken back at both", async () => {
  const { host, join } = await paired();
  await join();
  const book = await openBook(host);
  await doStep(host, sayStep(book, [book.parts!.rows[1]!], "action", "keep", "the action keep"));
  const said = await openBook(host);
  expect(valuesOf(said.parts).map(({ action }) => action)).toEqual(["keep", "keep", "replace"]);
  await doStep(host, unsayStep(said, said.parts!.rows[0]!, "action"));
  expect(valuesOf((await openBook(host)).parts).map(({ action }) => action)).toEqual(["test", "test", "replace"]);
});

test("papers name the part by both its lists", async () => {
  const { host, join } = await paired();
  await join();
  const { rows } = paperOf(await openBook(host), null, "report");
  expect(rows.map(([part]) => part)).toEqual(["Power R1 (R1 in factory list)", "Sound C1"]);
});

test("a reading taken at one of its rows serves both, and counts once in the drift", async () => {
  const { host, join } = await paired();
  await join();
  const book = await openBook(host);
  const row = book.parts!.rows[0]!;
  const readings = readReadings("112 k", row.values.value, "resistor");
  const taken = { row, readings, inPlace: "lifted", accuracy: null, remark: null } as const;
  await doStep(host, logReadingsStep(book, [taken], "12 Oct"));
  const read = await openBook(host);
  expect(valuesOf(read.parts).map(({ reading }) => reading)).toEqual(["112 k", "112 k", null]);
  expect(valuesOf(read.readings)).toHaveLength(1);
  expect(
    driftOf(read, "HL")
      .filter(({ by }) => by === "value")
      .map((each) => each.read),
  ).toEqual([1]);
  await doStep(host, leadsBackStep(read, [read.parts!.rows[1]!]));
  expect(valuesOf((await openBook(host)).parts).map(({ lifted }) => lifted)).toEqual([null, null, null]);
});
