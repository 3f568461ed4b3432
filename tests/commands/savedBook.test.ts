import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { openXlsx, saveXlsx } from "../../src/hosts/xlsx.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { lendXmlToNode } from "../../src/start/xmlForNode.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  lendXmlToNode();
  await registerFromSources();
});

describe("a workbook saved as .xlsx and opened again", () => {
  test("has the same rows, with formulas that still live, also where an answer is empty", async () => {
    const { host, model } = embeddedWorkbook(new Model());
    await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
    const before = await openBook(host);
    const after = await openBook(embeddedWorkbook(openXlsx(await saveXlsx(model()))).host);
    expect(valuesOf(after.parts)).toEqual(valuesOf(before.parts));
    expect(after.parts!.rows.map(({ formulas }) => formulas)).toEqual(
      before.parts!.rows.map(({ formulas }) => formulas),
    );
    expect(valuesOf(after.rules)).toEqual(valuesOf(before.rules));
  });
});
