import { expect, test } from "vitest";
import { openSheet } from "../../src/commands/openSheet.js";
import { addRows, type RowCells, rowsInPlace } from "../../src/commands/writeSheet.js";
import { LINES_SHEET } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";

const line = (text: string): RowCells<typeof LINES_SHEET> => ({ text, became: "part" });

test.each([
  [["new"], ["kept", "new"], "fewer rows leave no old one behind"],
  [["one", "two"], ["kept", "one", "two"], "as many rows stand where the old ones stood"],
  [["one", "two", "three"], ["kept", "one", "two", "three"], "further rows come behind the last one"],
])("rows in the place of two others: %j gives %j, %s", async (texts, wanted) => {
  const { host } = embeddedWorkbook(new Model());
  await host.write(addRows(null, LINES_SHEET, ["kept", "old", "older"].map(line)), "First");
  const view = (await openSheet(host, LINES_SHEET))!;
  await host.write(rowsInPlace(view, LINES_SHEET, view.rows.slice(1), texts.map(line)), "Again");
  const { rows } = (await openSheet(host, LINES_SHEET))!;
  expect(rows.map(({ values }) => values.text)).toEqual(wanted);
});

test("a sheet that is not there is made, with rows or without", async () => {
  const { host } = embeddedWorkbook(new Model());
  await host.write(rowsInPlace(null, LINES_SHEET, [], [line("first")]), "First");
  expect((await openSheet(host, LINES_SHEET))?.rows.length).toBe(1);
});
