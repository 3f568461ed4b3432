import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { mendedTemplates } from "../../../src/start/page/templates.js";

const file = createRequire(import.meta.url).resolve("@odoo/o-spreadsheet/dist/o_spreadsheet.xml");
const mended = mendedTemplates(readFileSync(file, "utf8"));

test.each([
  ["What the cell holds", "the formula bar and the cell"],
  ["Address or name", "the box with the cell's address"],
  ["props.title || 'Number'", "zoom and size of letters"],
  ["How many rows", "the rows added at the foot"],
])("the library still has the place where %j belongs: %s", (label) => {
  expect(mended).toContain(label);
});

test("no element of the grid comes before all others in the order of tabs", () => {
  expect(mended).not.toContain('tabindex="1"');
});
