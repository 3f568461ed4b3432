import { beforeAll, describe, expect, test } from "vitest";
import { openBook, rulesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { sayStep } from "../../src/commands/decideRows.js";
import { effectOf, isChange } from "../../src/commands/effects.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

async function opened() {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  return host;
}

describe("a use given to many rows", () => {
  test("says beforehand what each row will say once it is written", async () => {
    const host = await opened();
    const book = await openBook(host);
    const cells = { usedAs: "Across the line, after or before the switch" };
    const before = book.parts!.rows.map((row) => effectOf(row, rulesOf(book, "HL"), { cells }));
    // A paper capacitor across the line becomes a class X part: a safety place beats every class (IEC 60384-14).
    expect(before[2]!.will).toMatch(/^replace: .*class X/);
    await doStep(host, sayStep(book, book.parts!.rows, "usedAs", cells.usedAs, "the use"), true);
    const after = await openBook(host);
    const now = after.parts!.rows.map((row) => effectOf(row, rulesOf(after, "HL"), {}));
    expect(now.map(({ was }) => was)).toEqual(before.map(({ will }) => will));
    expect(now.some(isChange)).toBe(false);
  });

  test("leaves an action that the user typed, and can be left open again", async () => {
    const host = await opened();
    const first = await openBook(host);
    const paper = [first.parts!.rows[2]!];
    await doStep(host, sayStep(first, paper, "action", "keep", "the action keep"));
    const book = await openBook(host);
    const row = book.parts!.rows[2]!;
    const effect = effectOf(row, rulesOf(book, "HL"), { cells: { usedAs: "Screen bypass" } });
    expect([effect.was, effect.will, isChange(effect)]).toEqual(["keep", "keep", false]);
    await doStep(host, sayStep(book, [row], "usedAs", "Screen bypass", "the use"), true);
    await doStep(
      host,
      sayStep(await openBook(host), (await openBook(host)).parts!.rows.slice(2), "usedAs", "", "no use"),
      true,
    );
    expect((await openBook(host)).parts!.rows[2]!.values.usedAs).toBeNull();
  });
});
