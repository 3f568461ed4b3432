import { beforeAll, describe, expect, test } from "vitest";
import { openBook, rulesOf, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { overviewOf } from "../../src/commands/overview.js";
import { doStep } from "../../src/commands/step.js";
import { unreadIn, unreadRules } from "../../src/commands/unread.js";
import { PARTS_SHEET } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { saidOf } from "../../src/pane/card/cardTexts.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

/** A workbook with one list, and a way to type into it: the sheet, the row's place among its rows, the column's key. */
async function opened() {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  const type = async (sheet: "rules" | "settings" | "projects" | "parts", row: number, key: string, text: string) => {
    const view = (await openBook(host))[sheet]!;
    const column = (view.places as Record<string, number>)[key]!;
    await host.write([{ kind: "cells", sheet: view.name, row: view.rows[row]!.at, column, cells: [[text]] }], "typed");
  };
  return { book: () => openBook(host), type };
}

const settingAt = async (book: Awaited<ReturnType<typeof openBook>>, key: string) =>
  valuesOf(book.settings).findIndex((row) => row.key === key);

describe("what can't be read in rules, settings and set cards", () => {
  test("nothing is told of a workbook as it was written", async () => {
    expect(unreadRules(await (await opened()).book())).toEqual([]);
  });

  test.each<[string, "rules" | "projects", string, string, RegExp]>([
    ["an action that there is not", "rules", "trade", "replce", /can't read "replce".*keep; test; replace/i],
    ["a value rule misspelt", "rules", "valueMode", "neerest", /nearest; not below/],
    ["words for a number", "rules", "unstatedWatts", "half", /Write a number/],
    ["a technology nobody makes", "rules", "technologies", "unobtainium", /such as .+ > /],
    ["how far to go misspelt", "projects", "howFar", "tarde", /replace the known bad; test first/],
  ])("%s is told, with what would work", async (_, sheet, key, text, told) => {
    const { book, type } = await opened();
    await type(sheet, 0, key, text);
    expect(unreadRules(await book()).join()).toMatch(told);
  });

  test.each([
    ["policy", "tarde", "trade", /Write one of: replace the known bad/],
    ["line_now_V", "-120", 123, /Write a number from 1 up, in V/],
    ["film_floor_V", "lots", 630, /Write a number from 0 up/],
  ])("the setting %s at %s keeps its default %s", async (key, text, stands, told) => {
    const { book, type } = await opened();
    await type("settings", await settingAt(await book(), key), "setting", text);
    const typed = await book();
    expect(rulesOf(typed, TARGET.short).settings[key]).toBe(stands);
    expect(unreadRules(typed).join()).toMatch(told);
  });

  test("a set's own line volts below nought are passed over", async () => {
    const { book, type } = await opened();
    await type("projects", 0, "voltsNow", "-5");
    const typed = await book();
    expect(rulesOf(typed, TARGET.short).settings.line_now_V).toBe(123);
    expect(unreadRules(typed).join()).toMatch(/line volts at your outlet: Can't read "-5"/);
  });

  test("both spellings of a choice are read: the screen's words and the rules' own names", async () => {
    const { book, type } = await opened();
    const at = await settingAt(await book(), "policy");
    for (const text of ["conservator", "test first, keep what passes", "Test first, keep what passes"]) {
      await type("settings", at, "setting", text);
      const { settings } = rulesOf({ ...(await book()), projects: null }, null);
      expect(settings.policy).toBe("conservator");
    }
  });
});

test("words for a number in a row of Parts are told at the part", async () => {
  const { book, type } = await opened();
  await type("parts", 0, "voltsThere", "about 200");
  const [row] = (await book()).parts!.rows;
  expect(unreadIn(PARTS_SHEET, row!, "R1")).toEqual([
    `R1, volts there: Can't read "about 200". Write a number in V, or one with its unit.`,
  ]);
});

test("a part whose answer ends in an error counts as not decided, and its card says why", async () => {
  const { book, type } = await opened();
  // 4 kV across 470 k burn 34 W, at half load 68 W: 75 W; 40 kV burn 3.4 kW, for which no body is made.
  await type("parts", 0, "voltsThere", "40 kV");
  const typed = await book();
  const { values } = typed.parts!.rows[0]!;
  expect(values.action).toBeNull();
  expect(overviewOf(typed, null).toDecide).toBe(1);
  expect(saidOf(values, rulesOf(typed, values.project)).because.join()).toMatch(/Nothing fits .* largest rating/);
});
