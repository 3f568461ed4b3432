import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { closeSetStep } from "../../src/commands/closeSet.js";
import { theirCells } from "../../src/commands/fill.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

describe("a set that is closed", () => {
  test("keeps its answers as values, and still knows which cell was typed over afterwards", async () => {
    const { host } = embeddedWorkbook(new Model());
    await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
    const open = await openBook(host);
    const before = valuesOf(open.parts).map(({ action, newValue, newWatts }) => [action, newValue, newWatts]);
    const step = closeSetStep(open, "HL");
    expect(step.name).toBe("Close HL: Turn 3 rows into values");
    await doStep(host, step);
    const closed = await openBook(host);
    expect(valuesOf(closed.parts).map(({ action, newValue, newWatts }) => [action, newValue, newWatts])).toEqual(
      before,
    );
    expect(closed.parts!.rows.flatMap(({ formulas }) => Object.keys(formulas))).toEqual([]);
    expect(valuesOf(closed.projects)[0]!.state).toBe("closed");
    expect(closed.parts!.rows.flatMap(theirCells)).toEqual([]);
    const column = closed.parts!.places.action!;
    await host.write([{ kind: "cells", sheet: "Parts", row: 1, column, cells: [["keep"]] }], "typed");
    expect(theirCells((await openBook(host)).parts!.rows[0]!)).toContain("action");
  });
});
