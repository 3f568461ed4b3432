import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { sayStep } from "../../src/commands/decideRows.js";
import { effectsOf, type RuleEdit, ruleBookOf, ruleEditStep } from "../../src/commands/rulesChange.js";
import { addRuleStep, missingRules, putBackStep, restoreEdit, restoreSetting } from "../../src/commands/rulesRows.js";
import { rulesChangedSince } from "../../src/commands/rulesWatch.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

/** Two composition resistors and a paper capacitor. */
async function opened() {
  const { host, model } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  return { host, book: () => openBook(host), undo: () => model().dispatch("REQUEST_UNDO") };
}

type Book = Awaited<ReturnType<typeof openBook>>;
const actionsOf = (book: Book) => valuesOf(book.parts).map(({ action }) => action);
const ruleNamed = (book: Book, id: string) => book.rules!.rows.find(({ values }) => values.id === id)!;
const edit = (cells: Extract<RuleEdit, { sheet: "rules" }>["cells"], id = "carbon_comp"): RuleEdit => ({
  sheet: "rules",
  scope: "class",
  id,
  cells,
});

describe("a rule changed in the pane", () => {
  test("says beforehand which parts change, changes those only, and one undo takes it back", async () => {
    const { host, book, undo } = await opened();
    const before = await book();
    const effects = effectsOf(before, edit({ trade: "keep" }));
    expect(effects.map(({ row, will }) => [row.values.designator, will])).toEqual([
      ["R1", "keep"],
      ["R1", "keep"],
    ]);
    await doStep(host, ruleEditStep(before, edit({ trade: "keep" }), effects));
    expect(actionsOf(await book())).toEqual(["keep", "keep", "replace"]);
    undo();
    expect(actionsOf(await book())).toEqual(actionsOf(before));
  });

  test("a row that is switched off counts as not known, and can be restored", async () => {
    const { host, book } = await opened();
    const first = await book();
    await doStep(host, ruleEditStep(first, edit({ off: "yes" }, "paper_wax"), []));
    const off = await book();
    expect(valuesOf(off.parts)[2]!.action).toBe("ask");
    const back = restoreEdit(ruleNamed(off, "paper_wax").values)!;
    expect(effectsOf(off, back).map(({ row }) => row.values.designator)).toEqual(["C1"]);
    await doStep(host, ruleEditStep(off, back, []));
    expect(actionsOf(await book())).toEqual(actionsOf(first));
    expect(restoreEdit(ruleNamed(await book(), "paper_wax").values)).toBeNull();
  });

  test("a setting goes back to its default", async () => {
    const { host, book } = await opened();
    await doStep(host, ruleEditStep(await book(), { sheet: "settings", key: "guard", setting: "strict" }, []));
    const row = valuesOf((await book()).settings).find(({ key }) => key === "guard")!;
    const back = restoreSetting(row)!;
    expect(restoreSetting({ ...row, setting: (back as { setting: string }).setting })).toBeNull();
  });
});

describe("rows of one's own", () => {
  test("a new type is like the one it came from, and holds for parts that are given it", async () => {
    const { host, book } = await opened();
    const first = await book();
    await doStep(host, addRuleStep(first, ruleNamed(first, "paper_wax").values, "Paper in glass"));
    const added = await book();
    expect(ruleNamed(added, "paper_in_glass").values.source).toBe("yours");
    expect(actionsOf(added)).toEqual(actionsOf(first));
    await doStep(host, ruleEditStep(added, edit({ trade: "keep" }, "paper_in_glass"), []));
    const given = await book();
    await doStep(host, sayStep(given, [given.parts!.rows[2]!], "type", "Paper in glass", "the type"), true);
    expect(valuesOf((await book()).parts)[2]!.action).toBe("keep");
    expect(addRuleStep(added, ruleNamed(added, "paper_wax").values, "paper in GLASS").changes).toEqual([]);
  });

  test("a default row that was taken out can be put back", async () => {
    const { host, book } = await opened();
    const first = await book();
    const { at } = ruleNamed(first, "fuse");
    const cells = [first.rules!.heads.map(() => "")];
    await host.write([{ kind: "cells", sheet: "Rules", row: at, column: 0, cells }], "cleared");
    const without = await book();
    expect(missingRules(without).map(({ id }) => id)).toEqual(["fuse"]);
    await doStep(host, putBackStep(without, missingRules(without)));
    expect(missingRules(await book())).toEqual([]);
  });
});

describe("a rule changed in the sheet", () => {
  test("works at once, is told with the parts it changes, and can be taken back; sorting is no change", async () => {
    const { host, book } = await opened();
    const first = await book();
    const before = ruleBookOf(first);
    const rows = first.rules!.rows;
    const last = rows.at(-1)!;
    const heads = Object.keys(first.rules!.places) as (keyof typeof last.values)[];
    const cellsOf = ({ values }: typeof last) =>
      heads.map((key) => (values[key] === true ? "yes" : (values[key] ?? "")));
    const turned = [...rows].reverse().map(cellsOf);
    await host.write([{ kind: "cells", sheet: "Rules", row: rows[0]!.at, column: 0, cells: turned }], "sorted");
    const sorted = await book();
    expect(rulesChangedSince(sorted, before)).toBeNull();
    expect(actionsOf(sorted)).toEqual(actionsOf(first));
    const { at } = ruleNamed(sorted, "carbon_comp");
    const column = sorted.rules!.places.trade!;
    await host.write([{ kind: "cells", sheet: "Rules", row: at, column, cells: [["replace"]] }], "typed");
    const typed = await book();
    expect(actionsOf(typed)).toEqual(["replace", "replace", "replace"]);
    const seen = rulesChangedSince(typed, before)!;
    expect(seen.what).toEqual(["Carbon composition resistor, replace the known bad: test becomes replace"]);
    expect(seen.effects.map(({ row }) => row.values.designator)).toEqual(["R1", "R1"]);
    await doStep(host, seen.back);
    expect(rulesChangedSince(await book(), before)).toBeNull();
    expect(actionsOf(await book())).toEqual(actionsOf(first));
  });
});
