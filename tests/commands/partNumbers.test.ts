import { expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInNumbersStep, partNumbersOf } from "../../src/commands/partNumbers.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";

const rows = [
  { number: "61-0745", description: "2.2 meg 1/2 W" },
  { number: "61-0746", description: "470 k" },
];

async function withNumbers() {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInNumbersStep(await openBook(host), { rows, refused: [] }, "drawing 12"));
  return host;
}

test("part numbers are kept in a sheet of the workbook, with what told them", async () => {
  const book = await openBook(await withNumbers());
  expect(valuesOf(book.partNumbers)[0]).toEqual({ ...rows[0], source: "drawing 12" });
  expect(partNumbersOf(book).get("61-0746")).toBe("470 k");
});

test("a number told again takes the place of its old row, a new one goes below", async () => {
  const host = await withNumbers();
  const again = [
    { number: "61-0746", description: "560 k" },
    { number: "61-0747", description: "1 meg" },
  ];
  await doStep(host, bringInNumbersStep(await openBook(host), { rows: again, refused: [] }, "drawing 13"));
  expect([...partNumbersOf(await openBook(host))]).toEqual([
    ["61-0745", "2.2 meg 1/2 W"],
    ["61-0746", "560 k"],
    ["61-0747", "1 meg"],
  ]);
});

test("lines that give no number are said, and nothing at all is nothing to do", async () => {
  const book = await openBook(await withNumbers());
  const refused = [{ line: 3, text: "see page two" }];
  expect(bringInNumbersStep(book, { rows, refused }, "x").notes).toEqual([
    "1 line gave no number or nothing beside it.",
  ]);
  expect(bringInNumbersStep(book, { rows: [], refused }, "x").changes).toEqual([]);
});
