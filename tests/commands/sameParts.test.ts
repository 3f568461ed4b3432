import { beforeAll, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { joinStep, leaveAsideStep, otherListsStep } from "../../src/commands/joinParts.js";
import { aloneIn, compareStep, pairsOf, sayPairsStep, toConfirm } from "../../src/commands/sameParts.js";
import { doStep, type Step } from "../../src/commands/step.js";
import { DEFAULTS_IN_FORCE, readDocument } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";

beforeAll(async () => {
  await registerFromSources();
});

const LISTS = {
  factory: "R201  220  1W\nR202  470K  1/2W\nC201  .02 MFD 400V paper\nC202  .25 MFD 200V paper",
  folder: "R1  220  2W\nR2  470K  1/2W\nC1  .02 mfd 1000V paper",
};

/** A set whose factory list and folder are in the sheets and compared. */
async function compared() {
  const { host, model } = embeddedWorkbook(new Model());
  for (const [document, text] of Object.entries(LISTS)) {
    const lines = text.split("\n").map((line, at) => ({ number: at + 1, text: line, cells: null }));
    const reading = readDocument(lines, { capitalM: null, era: 1955, inForce: DEFAULTS_IN_FORCE });
    await doStep(host, bringInListStep(await openBook(host), reading, { short: "HL", set: "Harborlight", document }));
  }
  const run = async (step: Step) => {
    await doStep(host, step);
    return openBook(host);
  };
  return { host, model, run, book: await run(compareStep(await openBook(host), "HL")) };
}

const rowOf = (book: Awaited<ReturnType<typeof openBook>>, name: string) =>
  book.parts!.rows.find(({ values }) => values.designator === name)!;

test("two lists of a set are compared into a sheet: pairs, what they differ in, and parts of one list alone", async () => {
  const { book } = await compared();
  expect(pairsOf(book, "HL").map(({ one, other, state }) => [one.designator, other.designator, state])).toEqual([
    ["R201", "R1", "open"],
    ["R202", "R2", "open"],
    ["C201", "C1", "open"],
  ]);
  expect(aloneIn(book, "HL").map(({ designator }) => designator)).toEqual(["C202"]);
  expect(valuesOf(book.sameParts)[0]).toMatchObject({
    howSure: "sure",
    differs: "watts 2 W in folder (the safer), 1 W in factory",
  });
});

test("confirmed pairs are written to Parts, the ordered part takes the safer rating, and one undo takes all back", async () => {
  const { book, run, model, host } = await compared();
  const after = await run(sayPairsStep(book, toConfirm(pairsOf(book, "HL"), 0), "same part"));
  expect(pairsOf(after, "HL").map(({ state }) => state)).toEqual(["same part", "same part", "same part"]);
  expect(rowOf(after, "R1").values.sameAs).toBe(rowOf(after, "R201").values.id);
  const { otherList, newWatts, because } = rowOf(after, "R201").values;
  expect(otherList).toBe(`${rowOf(after, "R1").values.id}: watts 2 W`);
  expect(newWatts).toBe(rowOf(after, "R1").values.newWatts);
  expect(because).toContain("the safer of the two");
  model().dispatch("REQUEST_UNDO");
  expect(rowOf(await openBook(host), "R1").values).toMatchObject({ sameAs: null, otherList: null });
});

test("what was said is remembered when the lists are compared again, and can be taken back", async () => {
  const { book, run } = await compared();
  const [first, second] = pairsOf(book, "HL");
  const said = await run(sayPairsStep(book, [first!], "same part"));
  const refused = await run(sayPairsStep(said, [pairsOf(said, "HL")[1]!], "another part"));
  const again = await run(compareStep(refused, "HL"));
  const stateOf = (name: string, from: typeof again) =>
    pairsOf(from, "HL").find(({ one }) => one.designator === name)?.state;
  expect([stateOf("R201", again), stateOf("R202", again)]).toEqual(["same part", "another part"]);
  expect(second!.one.designator).toBe("R202");
  const confirmed = pairsOf(again, "HL").find(({ state }) => state === "same part")!;
  const back = await run(sayPairsStep(again, [confirmed], null));
  expect(stateOf("R201", back)).toBe("open");
  expect(rowOf(back, "R201").values.otherList).toBeNull();
});

test("a pair can be made by hand, its other rating left aside, and a figure changed since is written anew", async () => {
  const { book, run } = await compared();
  const joined = await run(joinStep(book, rowOf(book, "C201"), rowOf(book, "C1")));
  const id = rowOf(joined, "C1").values.id!;
  const aside = await run(leaveAsideStep(joined, rowOf(joined, "C201"), id, "volts", true));
  expect(rowOf(aside, "C201").values.otherList).toBe(`${id}: volts 1000 V left aside`);
  expect(rowOf(aside, "C201").values.newVolts).toBeLessThan(rowOf(joined, "C201").values.newVolts!);
  expect(otherListsStep(aside)).toBeNull();
  const [at, column] = [rowOf(aside, "C1").at, aside.parts!.places.volts!];
  const cells = [[1600]];
  const typed = { name: "typed", changes: [{ kind: "cells", sheet: "Parts", row: at, column, cells }] } as const;
  const changed = await run({ ...typed, overwrites: [], notes: [] });
  const renewed = await run(otherListsStep(changed)!);
  expect(rowOf(renewed, "C201").values.otherList).toBe(`${id}: volts 1600 V`);
});

test("a set with one list has nothing to compare", async () => {
  const { book } = await compared();
  expect(compareStep(book, "BX").changes).toEqual([]);
});
