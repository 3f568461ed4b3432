import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { fillStep, rowsToFill, takeBackStep, theirCells } from "../../src/commands/fill.js";
import { doStep } from "../../src/commands/step.js";
import { DEFAULTS_IN_FORCE, partOfRow } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

async function written() {
  const { host, model } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  return { host, model, book: await openBook(host) };
}

describe("a list written to the sheets", () => {
  test("becomes one row a part, with an id that is not its place and live answers", async () => {
    const { book } = await written();
    const rows = valuesOf(book.parts);
    expect(rows.map(({ id, section, designator }) => [id, section, designator])).toEqual([
      ["HL-1", "Power", "R1"],
      ["HL-2", "Sound", "R1"],
      ["HL-3", "Sound", "C1"],
    ]);
    expect(rows.map(({ action }) => action)).toEqual(["test", "test", "replace"]);
    expect(rows[2]).toMatchObject({ value: "0.047 µF", size: 4.7e-8, newValue: "0.047 µF" });
    expect(book.parts?.rows[0]?.formulas.action).toMatch(/^=LUG\.ANSWER\(/);
  });

  test("keeps every line of the document, whatever became of it", async () => {
    const { book } = await written();
    expect(valuesOf(book.lines).map(({ line, became }) => [line, became])).toEqual([
      [1, "heading or note"],
      [3, "part"],
      [9, "unclear"],
    ]);
  });

  test("is one step, which one undo takes back", async () => {
    const { host, model } = await written();
    model().dispatch("REQUEST_UNDO");
    expect(await host.read("Parts")).toBeNull();
  });

  test("read again finds its rows: ids, readings and typed cells stay", async () => {
    const { host, book } = await written();
    const parts = book.parts!;
    const cell = (key: "watts" | "reading", written: string | number) => ({
      kind: "cells" as const,
      sheet: parts.name,
      row: 1,
      column: parts.places[key]!,
      cells: [[written]],
    });
    await host.write([cell("watts", 2), cell("reading", "112 k")], "typed");
    const again = { ...LIST, parts: LIST.parts.map((part) => ({ ...part, printed: `${part.printed}!` })) };
    const step = bringInListStep(await openBook(host), again, TARGET);
    expect(step.name).toBe("Write 0 parts to the sheet, 3 read again");
    await doStep(host, step);
    const rows = valuesOf((await openBook(host)).parts);
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatchObject({ id: "HL-1", watts: 2, reading: "112 k", printed: "R1 100K!" });
  });

  test("what a person corrected on the page is the person's, and stays when the list is read again", async () => {
    const { host, book } = await written();
    await doStep(host, bringInListStep(book, LIST, TARGET, new Map([[0, { watts: 1, unsure: null }]])));
    await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
    const [row] = valuesOf((await openBook(host)).parts);
    expect(row).toMatchObject({ id: "HL-1", watts: 1 });
    expect(partOfRow(row!, DEFAULTS_IN_FORCE.rules).watts).toMatchObject({ value: 1, from: "user" });
    const fresh = embeddedWorkbook(new Model()).host;
    const step = bringInListStep(await openBook(fresh), LIST, TARGET, new Map([[2, { volts: null, value: "0.5 µF" }]]));
    await doStep(fresh, step);
    const first = valuesOf((await openBook(fresh)).parts)[2]!;
    expect(first).toMatchObject({ designator: "C1", value: "0.5 µF", volts: null });
    expect(partOfRow(first, DEFAULTS_IN_FORCE.rules).value?.from).toBe("user");
  });

  test("a second set goes on below, with ids of its own", async () => {
    const { host, book } = await written();
    await doStep(host, bringInListStep(book, LIST, { ...TARGET, short: "MB", set: "Millbrook" }));
    const after = await openBook(host);
    expect(valuesOf(after.parts).map(({ id }) => id)).toEqual(["HL-1", "HL-2", "HL-3", "MB-1", "MB-2", "MB-3"]);
    expect(valuesOf(after.projects).map(({ short }) => short)).toEqual(["HL", "MB"]);
  });
});

describe("worked-out cells", () => {
  test("how far to go, changed in Projects, changes the answers at once", async () => {
    const { host, book } = await written();
    const projects = book.projects!;
    const cells = [["replace all but the stable"]];
    const column = projects.places.howFar!;
    await host.write([{ kind: "cells", sheet: projects.name, row: 1, column, cells }], "typed");
    expect(valuesOf((await openBook(host)).parts).map(({ action }) => action)).toEqual([
      "replace",
      "replace",
      "replace",
    ]);
  });

  test("one that is typed over is the user's, flows to the right, and can be taken back", async () => {
    const { host, book } = await written();
    const column = book.parts!.places.action!;
    await host.write([{ kind: "cells", sheet: "Parts", row: 3, column, cells: [["keep"]] }], "typed");
    const typed = await openBook(host);
    expect(theirCells(typed.parts!.rows[2]!)).toEqual(["action"]);
    expect(typed.parts!.rows[2]!.values.newValue).toBeNull();
    await doStep(host, takeBackStep(typed, 3, ["action"]));
    const back = await openBook(host);
    expect(back.parts!.rows[2]!.values).toMatchObject({ action: "replace", newValue: "0.047 µF" });
  });

  test("an inserted row without them is filled, and given an id", async () => {
    const { host, book } = await written();
    const { designator, value, kind, type, project } = book.parts!.places;
    const typed = [
      [designator, "R9"],
      [value, "10 k"],
      [kind, "resistor"],
      [type, "carbon_comp"],
      [project, "HL"],
    ] as const;
    const changes = typed.map(([column, text]) => ({
      kind: "cells" as const,
      sheet: "Parts",
      row: 4,
      column: column!,
      cells: [[text]],
    }));
    await host.write(changes, "typed");
    const open = await openBook(host);
    expect(rowsToFill(open.parts!)).toHaveLength(1);
    expect(fillStep(open).name).toBe("Fill 1 row");
    await doStep(host, fillStep(open));
    const rows = valuesOf((await openBook(host)).parts);
    expect(rows[3]).toMatchObject({ id: "HL-4", action: "test" });
  });
});
