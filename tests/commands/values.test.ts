import { beforeAll, describe, expect, test } from "vitest";
import { openBook, rulesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { sayStep } from "../../src/commands/decideRows.js";
import { rowsToFill, theirCells } from "../../src/commands/fill.js";
import { logReadingsStep, tellsOf } from "../../src/commands/readings.js";
import { doStep } from "../../src/commands/step.js";
import { liveStep, valuesStep } from "../../src/commands/values.js";
import { readReadings } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

async function opened() {
  const { host, model } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  const book = () => openBook(host);
  return { host, book, undo: () => model().dispatch("REQUEST_UNDO") };
}

const answersOf = ({ parts }: Awaited<ReturnType<typeof openBook>>) =>
  parts!.rows.map(({ values: { verdict, action, because, newValue, newWatts, look } }) => ({
    ...{ verdict, action, because, newValue, newWatts, look },
  }));

const lifted = (row: Parameters<typeof tellsOf>[0]["row"], text: string) => ({
  row,
  readings: readReadings(text, row.values.value, "resistor"),
  inPlace: "lifted" as const,
  accuracy: 0.01,
  remark: null,
});

describe("answers turned into values", () => {
  test("read the same, count as typed by nobody, and one undo makes them live again", async () => {
    const { host, book, undo } = await opened();
    const open = await book();
    await doStep(host, valuesStep(open.parts!, open.parts!.rows));
    const values = await book();
    expect(answersOf(values)).toEqual(answersOf(open));
    expect(values.parts!.rows.flatMap(({ formulas }) => Object.keys(formulas))).toEqual([]);
    expect(values.parts!.rows.flatMap(theirCells)).toEqual([]);
    expect(rowsToFill(values.parts!)).toEqual([]);
    undo();
    expect((await book()).parts!.rows[0]!.formulas.verdict).toBeDefined();
  });

  test("an edited reason is the user's, and stays when the rest is made live again", async () => {
    const { host, book } = await opened();
    const open = await book();
    await doStep(host, valuesStep(open.parts!, open.parts!.rows));
    const values = await book();
    const column = values.parts!.places.because!;
    const typed = `${values.parts!.rows[1]!.values.because}, said the owner`;
    await host.write([{ kind: "cells", sheet: "Parts", row: 2, column, cells: [[typed]] }], "typed");
    const edited = await book();
    expect(edited.parts!.rows.map(theirCells)).toEqual([[], ["because"], []]);
    await doStep(host, liveStep(edited, edited.parts!.rows));
    const live = await book();
    expect(live.parts!.rows[1]!.values.because).toBe(typed);
    expect(live.parts!.rows[1]!.formulas.action).toBeDefined();
    expect(live.parts!.rows.map(({ values: { from } }) => from)).toEqual(
      open.parts!.rows.map((row) => row.values.from),
    );
  });

  test("one column alone can be turned; the rest stays live", async () => {
    const { host, book } = await opened();
    const open = await book();
    await doStep(host, valuesStep(open.parts!, open.parts!.rows, ["verdict"]));
    const { formulas } = (await book()).parts!.rows[0]!;
    expect([formulas.verdict, formulas.action !== undefined, formulas.rules !== undefined]).toEqual([
      undefined,
      true,
      true,
    ]);
  });

  test("an old verdict of ours is no finding of the user's: a new reading renews the row by itself", async () => {
    const { host, book } = await opened();
    const open = await book();
    await doStep(host, logReadingsStep(open, [lifted(open.parts!.rows[1]!, "612")], "now"));
    const bad = await book();
    await doStep(host, valuesStep(bad.parts!, bad.parts!.rows));
    const values = await book();
    const row = values.parts!.rows[1]!;
    expect(row.values.verdict).toBe("bad");
    expect(tellsOf(lifted(row, "480"), rulesOf(values, "HL")).action).toBe("keep");
    const step = logReadingsStep(values, [lifted(row, "480")], "later");
    expect(step.notes).toContain("No longer to be bought: R1 Sound.");
    await doStep(host, step);
    const after = (await book()).parts!.rows[1]!;
    expect([after.values.verdict, after.values.action, theirCells(after)]).toEqual(["good", "keep", []]);
    expect(after.formulas).toEqual({});
  });

  test("a use given to such a row renews its answers, too", async () => {
    const { host, book } = await opened();
    const open = await book();
    await doStep(host, valuesStep(open.parts!, open.parts!.rows));
    const values = await book();
    const label = "Across the line, after or before the switch";
    await doStep(host, sayStep(values, [values.parts!.rows[2]!], "usedAs", label, "the use"), true);
    const after = (await book()).parts!.rows[2]!;
    expect(after.values.newType).toMatch(/class X/);
    expect(theirCells(after)).toEqual([]);
  });
});
