import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { registerCellFunctions, standInForExcel } from "../../src/hosts/cellFunctions.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { Change, Host, Written } from "../../src/hosts/host.js";
import { Model } from "../../src/hosts/library.js";
import { openXlsx, saveXlsx } from "../../src/hosts/xlsx.js";
import { lendXmlToNode } from "../../src/start/xmlForNode.js";

beforeAll(() => {
  lendXmlToNode();
  standInForExcel();
  CustomFunctions.associate("TWICE", (values: number[][]) => values.map((row) => row.map((value) => value * 2)));
  registerCellFunctions({ functions: [{ id: "TWICE", parameters: [{ name: "v", dimensionality: "matrix" }] }] }, "LUG");
});

const cells = (cells: Written[][]): Change => ({ kind: "cells", sheet: "Parts", row: 0, column: 0, cells });

async function saved(...changes: Change[]): Promise<{ model: Model; bytes: Uint8Array; host: Host }> {
  const { host, model } = embeddedWorkbook(new Model());
  await host.write(changes, "Write");
  return { model: model(), host, bytes: await saveXlsx(model()) };
}

const part = (bytes: Uint8Array, path: string) => strFromU8(unzipSync(bytes)[path]!);
const cellXml = (bytes: Uint8Array, address: string) =>
  new RegExp(`<c r="${address}"[^>]*>.*?</c>`).exec(part(bytes, "xl/worksheets/sheet0.xml"))?.[0];

async function rowsOf(model: Model, sheet = "Parts") {
  return (await embeddedWorkbook(model).host.read(sheet))!.rows;
}

describe("saving and opening .xlsx", () => {
  test("what was saved opens the same: values, texts, formulas", async () => {
    const written: Written[][] = [
      ["id", "text", "number", "worked out"],
      ["a", "=1+41", 0.047, { formula: "=C2*2" }],
      ["b", "0402", 1e-12, { formula: "=LUG.TWICE(C2)" }],
      ["c", "'x", true, { formula: '=IF(A2="a","<&>","no")' }],
      ["d", ' two\nlines & "more" ', -3, { formula: "=1/0" }],
      ["e", "1/2", "", { formula: "=C2>3" }],
      ["f", "TRUE", "", { formula: '=""' }],
    ];
    const { model, bytes } = await saved(cells(written));
    expect(await rowsOf(openXlsx(bytes))).toEqual(await rowsOf(model));
  });

  test("a formula of one value is stored as a plain one, with Excel's name for our functions", async () => {
    const { bytes } = await saved(cells([[2, { formula: "=LUG.TWICE(A1)" }, { formula: '=A1&"LUG.TWICE("' }]]));
    expect(cellXml(bytes, "B1")).toBe('<c r="B1"><f>_xldudf_LUG_TWICE(A1)</f><v>4</v></c>');
    expect(cellXml(bytes, "C1")).toBe('<c r="C1" t="str"><f>A1&amp;&quot;LUG.TWICE(&quot;</f><v>2LUG.TWICE(</v></c>');
  });

  test("a formula that spills stays one that spills, and its other cells carry their values", async () => {
    const { bytes } = await saved(cells([[1], [2], [{ formula: "=LUG.TWICE(A1:A2)" }]]));
    expect(cellXml(bytes, "A3")).toContain('cm="1"><f t="array" ref="A3:A4">_xldudf_LUG_TWICE(A1:A2)</f><v>2</v>');
    expect(cellXml(bytes, "A4") ?? "").toContain("<v>4</v>");
  });

  test("errors and truth values are stored by Excel's rules", async () => {
    const { bytes } = await saved(cells([[{ formula: "=1/0" }, { formula: "=2>1" }, true]]));
    expect(cellXml(bytes, "A1")).toBe('<c r="A1" t="e"><f>1/0</f><v>#DIV/0!</v></c>');
    expect(cellXml(bytes, "B1")).toBe('<c r="B1" t="b"><f>2&gt;1</f><v>1</v></c>');
    expect(cellXml(bytes, "C1")).toBe('<c r="C1" t="b"><v>1</v></c>');
  });

  test("filter buttons, frozen heads, folds and widths come back", async () => {
    const column = { width: 120, format: "@", tint: "yours" as const, group: "was", folded: false };
    const look: Change = { kind: "look", sheet: "Parts", columns: [column, column], frozenColumns: 1, filter: true };
    const { bytes } = await saved(
      cells([
        ["id", "value"],
        ["a", "0402"],
      ]),
      look,
    );
    expect(part(bytes, "xl/worksheets/sheet0.xml")).toContain('<autoFilter ref="A1:B2"/>');
    expect(part(bytes, "xl/worksheets/sheet0.xml")).toContain('<outlinePr summaryRight="0"/>');
    expect(Object.keys(unzipSync(bytes)).filter((path) => path.includes("table"))).toEqual([]);
    const opened = openXlsx(bytes);
    const sheetId = opened.getters.getSheetIdByName("Parts")!;
    expect(opened.getters.getCoreTables(sheetId).map((table) => table.range.zone)).toMatchObject([
      { right: 1, bottom: 1 },
    ]);
    expect(opened.getters.getHeaderGroups(sheetId, "COL")).toMatchObject([{ start: 1, end: 1 }]);
    expect((await rowsOf(opened))[1]!.map((cell) => cell.value)).toEqual(["a", "0402"]);
  });

  test("a closed fold comes back closed, and nothing is hidden that could not be opened", async () => {
    const column = { width: 120, format: null, tint: null, group: "was", folded: false };
    const columns = [column, column, { ...column, group: "found", folded: true }];
    const look: Change = {
      kind: "look",
      sheet: "Parts",
      columns: [...columns, columns[2]!, { ...column, group: null }],
      frozenColumns: 0,
      filter: false,
    };
    const { bytes } = await saved(cells([["a", "b", "c", "d", "e"]]), look);
    const opened = openXlsx(bytes);
    const sheetId = opened.getters.getSheetIdByName("Parts")!;
    expect(opened.getters.getHeaderGroups(sheetId, "COL")).toMatchObject([
      { start: 1, end: 1, isFolded: false },
      { start: 3, end: 3, isFolded: true },
    ]);
  });

  test.each([
    ["shared text", (xml: string) => xml],
    [
      "inline text",
      (xml: string) => xml.replace(/<c r="A1"[^>]*>.*?<\/c>/, '<c r="A1" t="inlineStr"><is><t>=1+41</t></is></c>'),
    ],
    [
      "cut into runs",
      (xml: string) =>
        xml.replace(
          /<c r="A1"[^>]*>.*?<\/c>/,
          '<c r="A1" t="inlineStr"><is><r><t>=</t></r><r><t>1+41</t></r></is></c>',
        ),
    ],
    ["bare text", (xml: string) => xml.replace(/<c r="A1"[^>]*>.*?<\/c>/, '<c r="A1" t="str"><v>=1+41</v></c>')],
  ])("the text =1+41 of a foreign file stays text: %s", async (_, change) => {
    const { bytes } = await saved(cells([["=1+41"]]));
    const files = unzipSync(bytes);
    const path = "xl/worksheets/sheet0.xml";
    files[path] = strToU8(change(strFromU8(files[path]!)));
    const opened = openXlsx(zipSync(files));
    expect((await rowsOf(opened))[0]![0]).toEqual({ value: "=1+41", formula: null });
    const again = await saveXlsx(opened);
    expect(part(again, "xl/sharedStrings.xml")).toContain(">=1+41<");
    expect(part(again, path)).not.toContain("<f>");
  });

  test("opening cannot be undone into something else", async () => {
    const { bytes } = await saved(cells([["=1+41"], ["0402"]]));
    const opened = openXlsx(bytes);
    opened.dispatch("REQUEST_UNDO");
    expect((await rowsOf(opened)).flat().map((cell) => cell.value)).toEqual(["=1+41", "0402"]);
  });

  test.each([
    ["an empty file", new Uint8Array(0)],
    ["noise", new Uint8Array([1, 2, 3, 4, 5, 6, 7, 8])],
    ["some other archive", zipSync({ "a.txt": strToU8("hello") })],
    ["a cut file", zipSync({ "xl/workbook.xml": strToU8("<workbook/>") }).slice(0, 40)],
  ])("%s is refused with a sentence", (_, bytes) => {
    expect(() => openXlsx(bytes)).toThrow(/Can't read "this file"/);
  });
});
