import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, describe, expect, test } from "vitest";
import { closeBrowser, savedFile, type Visit, visit } from "./visit.js";

afterAll(closeBrowser);

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function saveAsFile({ page }: Visit): Promise<string> {
  const download = page.waitForEvent("download");
  await page.locator(".o-topbar-menu", { hasText: "File" }).click();
  await page.locator(".o-menu-item", { hasText: "Save as .xlsx" }).click();
  const file = savedFile("saved.xlsx");
  await (await download).saveAs(file);
  return file;
}

async function openFile({ page }: Visit, path: string): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.locator(".o-topbar-menu", { hasText: "File" }).click();
  await page.locator(".o-menu-item", { hasText: "Open a workbook (.xlsx)" }).click();
  await (await chooser).setFiles(path);
}

/** Tabs leave the canvas of cells in no direction, so a key of its own has to. */
async function whereFocusIs({ page }: Visit): Promise<string> {
  return page.evaluate(() => (document.activeElement?.closest("#grid, #pane, #tabs") ?? document.body).id);
}

describe("the page", () => {
  test("opens with nothing asked from elsewhere and nothing amiss", async () => {
    const { errors, strangers, picture, close } = await visit();
    await picture("page-1280-light");
    expect(strangers).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  test("works out one of our functions typed into a cell", async () => {
    const { typeInCell, cellText, picture, close } = await visit();
    await typeInCell("B2", '=LUG.NEAREST_STD(52000,"E12")');
    await picture("formula");
    expect(await cellText("B2")).toBe("56000");
    await close();
  });

  test("keeps the workbook over a reload, and saves and opens it as a file", async () => {
    const first = await visit();
    await first.typeInCell("A1", '=LUG.NEAREST_STD(95,"E12")');
    await first.typeInCell("A2", "0402");
    await first.page.waitForTimeout(1200);
    await first.page.reload();
    await first.page.waitForSelector("body[data-ready]");
    expect(await first.cellText("A1")).toBe("100");
    const file = await saveAsFile(first);
    await first.close();
    const second = await visit();
    await openFile(second, file);
    await expect.poll(() => second.cellText("A1"), { timeout: 10_000 }).toBe("100");
    expect(second.errors).toEqual([]);
    await second.close();
  });

  test("says so when a file is no workbook, and keeps what was there", async () => {
    const here = await visit();
    await here.typeInCell("A1", "kept");
    await openFile(here, import.meta.filename);
    await here.page.getByRole("button", { name: "OK", exact: true }).click();
    await here.page.getByText("Save it as an .xlsx workbook").waitFor();
    expect(await here.cellText("A1")).toBe("kept");
    await here.close();
  });

  test("draws a chart, and draws it again after a reload", async () => {
    const { page, typeInCell, errors, close } = await visit();
    await page.waitForFunction(() => "Chart" in window);
    await typeInCell("A1", "3");
    await page.keyboard.press("ArrowUp");
    await page.locator(".o-topbar-menu", { hasText: "Insert" }).click();
    await page.locator(".o-menu-item", { hasText: "Chart" }).click();
    await page.locator(".o-figure canvas").waitFor();
    await page.waitForTimeout(1200);
    await page.reload();
    await page.locator(".o-figure canvas").waitFor();
    expect(errors).toEqual([]);
    await close();
  });

  test("F6 goes from the cells to the pane and back", async () => {
    const here = await visit();
    await here.typeInCell("A1", "x");
    expect(await whereFocusIs(here)).toBe("grid");
    await here.page.keyboard.press("F6");
    expect(await whereFocusIs(here)).toBe("pane");
    await here.page.keyboard.press("F6");
    await here.page.keyboard.type("typed after F6");
    await here.page.keyboard.press("Enter");
    expect(await here.cellText("A2")).toBe("typed after F6");
    await here.close();
  });

  test.each([
    { width: 1280, dark: false },
    { width: 1280, dark: true },
    { width: 768, dark: false },
    { width: 320, dark: false },
  ])("has no barrier that axe finds at $width px (dark: $dark)", async (look) => {
    const { page, picture, close } = await visit(look);
    await picture(`page-${look.width}-${look.dark ? "dark" : "light"}`);
    await page.evaluate(AXE);
    const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa"];
    const found = await page.evaluate(
      (tags) =>
        (
          globalThis as unknown as {
            axe: {
              run(
                context: object,
                options: object,
              ): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
            };
          }
        ).axe.run({ exclude: ["[data-tabster-dummy]"] }, { runOnly: tags }),
      rules,
    );
    expect(found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
    await close();
  });
});
