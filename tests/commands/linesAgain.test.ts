import { beforeAll, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { keptDocuments, textFromLines } from "../../src/commands/linesAgain.js";
import { doStep } from "../../src/commands/step.js";
import { DEFAULTS_IN_FORCE, type PartNumberTable, readDocument } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { readSource } from "../../src/sources/readSource.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";

beforeAll(async () => {
  await registerFromSources();
});

const LIST = "Symbol\tPart No.\tDescription\n\nR1\t61-0745\tresistor, 1/2 W\nR2\t\tresistor, 470K";
const TARGET = { short: "HL", set: "Harborlight", document: "factory list" };

const understood = async (text: string, partNumbers: PartNumberTable = new Map()) =>
  readDocument((await readSource("list", new TextEncoder().encode(text))).lines, {
    capitalM: null,
    era: 1955,
    inForce: DEFAULTS_IN_FORCE,
    partNumbers,
  });

test("a list is read again from its lines in the sheet, with part numbers that came later", async () => {
  const { host } = embeddedWorkbook(new Model());
  const step = bringInListStep(await openBook(host), await understood(LIST), TARGET);
  expect(step.notes).toContain("Your part numbers do not tell what 61-0745 is.");
  await doStep(host, step);
  const book = await openBook(host);
  expect(keptDocuments(book)).toEqual([{ project: "HL", document: "factory list", lines: 3 }]);
  const again = await understood(
    textFromLines(book, { project: "HL", document: "factory list" }),
    new Map([["61-0745", "2.2 meg ±5 %"]]),
  );
  await doStep(host, bringInListStep(book, again, TARGET));
  const rows = valuesOf((await openBook(host)).parts);
  expect(rows.map(({ id, value }) => [id, value])).toEqual([
    ["HL-1", "2.2 M"],
    ["HL-2", "470 k"],
  ]);
  expect(rows[0]!.from).toContain("value 2.2 M (line part number 61-0745)");
});
