import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, describe, expect, test } from "vitest";
import { beginSitting, pane, press, said, withSample } from "./pane.js";
import { closeBrowser, savedFile, type Visit, visit } from "./visit.js";

afterAll(closeBrowser);

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let opened: Promise<Visit> | null = null;

/** One visit with the sample open, for all that only look. */
function sample(): Promise<Visit> {
  opened ??= withSample();
  return opened;
}

const PASTED = `PARTS LIST  (resistors 1/2 watt)
R1   470K   plate load
R2   1 MEG  grid leak
C1   .05 mf 400 v
see also the next page
`;

describe("the main job on the page", () => {
  test("goes from the sample to an order from several vendors", async () => {
    const seen = await withSample();
    const { page, picture, errors } = seen;
    await picture("sample-parts");
    await press(page, /^Vendors/);
    await press(page, /^Find offers for/);
    await said(page, /Done: Find offers/);
    await picture("vendors");
    await press(page, /^Order/);
    await press(page, /^Plan \d+ lines/);
    await page.getByRole("button", { name: /^Write an order of/ }).waitFor({ timeout: 40_000 });
    await picture("order-plan");
    await press(page, /^Write an order of/);
    await said(page, /Done: Write an order/);
    await seen.showSheet("Order");
    await picture("order");
    expect(errors).toEqual([]);
    await seen.close();
  });

  test("puts a plan aside when other spares are wished for, and compares it with the next one", async () => {
    const seen = await withSample();
    const { page, picture } = seen;
    await press(page, /^Order/);
    await press(page, /^Plan \d+ lines/);
    const write = page.getByRole("button", { name: /^Write an order of/ });
    await write.waitFor({ timeout: 40_000 });
    await pane(page).getByLabel("Spare resistors, in %").fill("100");
    expect(await write.count()).toBe(0);
    await press(page, /^Plan \d+ lines/);
    await write.waitFor({ timeout: 40_000 });
    await said(page, /more than the plan in force/);
    await picture("order-spares");
    await seen.close();
  });

  test("reads a part at the bench once the stops of the set are ticked, and the answer changes", async () => {
    const seen = await withSample();
    const { page, picture } = seen;
    await press(page, /^Bench/);
    await picture("bench-stops");
    await beginSitting(page);
    await pane(page).getByLabel("Designator").fill("R4");
    await pane(page)
      .getByLabel(/^Reading,/)
      .fill("136");
    await picture("bench-verdict");
    await pane(page)
      .getByLabel(/^Reading,/)
      .press("Enter");
    await said(page, /Done: Log R4 136 k in place/);
    await picture("bench-logged");
    await seen.close();
  });

  test("brings in a pasted list line by line, saves it, and opens it again with its answers", async () => {
    const seen = await visit();
    const { page, picture } = seen;
    await press(page, "Bring in a parts list");
    await pane(page)
      .getByLabel(/^Paste it here/)
      .fill(PASTED);
    await press(page, "See how it is understood");
    await said(page, "3 parts in 5 lines");
    await picture("list-preview");
    await pane(page).getByLabel("Short name of the set").fill("MR");
    await pane(page).getByLabel("What it is").fill("Mantel receiver");
    await press(page, "Write 3 parts to the sheet");
    await said(page, /Done: Write 3 parts/);
    await seen.showSheet("Parts");
    expect(await seen.cellText("A2")).toBe("MR-1");
    const download = page.waitForEvent("download");
    await page.locator(".o-topbar-menu", { hasText: "File" }).click();
    await page.getByText("Save as .xlsx").click();
    const file = savedFile("job.xlsx");
    await (await download).saveAs(file);
    await seen.close();

    const second = await visit();
    const chooser = second.page.waitForEvent("filechooser");
    await press(second.page, "Open a workbook (.xlsx)");
    await (await chooser).setFiles(file);
    await said(second.page, /^3 parts: 1 decided/);
    await second.close();
  });

  test.each(["List", "Parts", "Bench", "Vendors", "Order", "Fit", "Papers", "Rules", "Set card", "Functions"])(
    "the screen %s has nothing that keeps a screen reader or a keyboard out",
    async (name) => {
      const { page } = await sample();
      await press(page, new RegExp(`^${name}`));
      await page.waitForTimeout(300);
      await page.evaluate(AXE);
      const found = await page.evaluate(async () => {
        const axe = (window as unknown as { axe: { run(on: object): Promise<Found> } }).axe;
        type Found = { violations: { id: string; nodes: { html: string }[] }[] };
        const { violations } = await axe.run({ include: "#pane", exclude: ["[data-tabster-dummy]", "iframe"] });
        return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
      });
      expect(found).toEqual([]);
    },
  );
});
