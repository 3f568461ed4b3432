import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { readSource } from "../../src/sources/readSource.js";
import { unzipWithin } from "../../src/sources/unzipWithin.js";
import { readXlsx } from "../../src/sources/xlsx/readXlsx.js";
import { workbookBytes } from "./workbookBytes.js";

const cellsOf = (bytes: Uint8Array) => readXlsx(bytes, "list.xlsx").lines.map((line) => [line.number, line.cells]);

describe("a workbook becomes lines with cells", () => {
  test("row numbers are the sheet's own, blank rows are left out, gaps between cells stay", () => {
    const rows = `<row r="2"><c r="A2" t="s"><v>0</v></c><c r="C2"><v>470</v></c></row><row r="5"><c r="B5" t="inlineStr"><is><t>½ W</t></is></c></row>`;
    expect(cellsOf(workbookBytes(rows, ["R&amp;D"]))).toEqual([
      [2, ["R&D", "", "470"]],
      [5, ["", "½ W"]],
    ]);
  });

  test.each([
    [`<c r="A1" t="inlineStr"><is><t>=1+41</t></is></c>`, "=1+41", "a text that looks like a formula stays text"],
    [`<c r="A1"><f>1+41</f><v>42</v></c>`, "42", "a formula counts as what it showed"],
    [`<c r="A1"><v>0.14440000000000003</v></c>`, "0.1444", "no digits that nobody typed"],
    [`<c r="A1" s="1"><v>0.05</v></c>`, "5%", "a percent cell"],
    [`<c r="A1" s="2"><v>45292</v></c>`, "2024-01-01", "a date (spreadsheets make them of 1/2)"],
    [`<c r="A1" t="b"><v>1</v></c>`, "TRUE", "a yes"],
    [`<c r="A1" t="e"><v>#N/A</v></c>`, "#N/A", "an error"],
    [`<c r="A1" t="s"><v>1</v></c>`, "47 k", "a string in runs of two looks"],
    [`<c r="A1" t="str"><f>A2</f><v>a &lt; b</v></c>`, "a < b", "a formula that gives text"],
  ])("%s shows %j: %s", (cell, shown) => {
    const strings = ["x", `<r><t>47</t></r><r><rPr/><t xml:space="preserve"> k</t></r>`];
    expect(cellsOf(workbookBytes(`<row r="1">${cell}</row>`, strings))).toEqual([[1, [shown]]]);
  });
});

describe("archives that mean harm or are broken", () => {
  const zeros = new Uint8Array(5_000_000);

  test("a bomb is refused by what it declares, before it is inflated", () => {
    const bomb = zipSync({ "xl/workbook.xml": zeros });
    expect(bomb.length).toBeLessThan(20_000);
    expect(() => unzipWithin(bomb, () => true, 1_000_000)).toThrow(/limit is 1 MB/);
  });

  test("a bomb that lies about its size is stopped while it is inflated", () => {
    const bomb = zipSync({ "xl/workbook.xml": zeros });
    const view = new DataView(bomb.buffer);
    for (let at = 0; at + 4 < bomb.length; at++) {
      if (view.getUint32(at, true) === zeros.length) view.setUint32(at, 100, true);
    }
    expect(() => unzipWithin(bomb, () => true, 1_000_000)).toThrow(/limit is 1 MB/);
  });

  test.each([
    ["an archive of other things", zipSync({ "readme.txt": strToU8("hello") }), /no .xlsx workbook/],
    ["a workbook cut short", workbookBytes(`<row r="1"/>`, []).subarray(0, 300), /damaged/],
    ["an old .xls", Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1), /Save it as .xlsx/],
  ])("%s says what it is", async (_, bytes, says) => {
    await expect(readSource("list.xlsx", bytes)).rejects.toThrow(says);
  });
});
