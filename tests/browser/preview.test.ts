import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, test } from "vitest";
import { pdfBytes } from "../sources/pdfBytes.js";
import { pane } from "./pane.js";
import { typedPage } from "./typedPage.js";
import { closeBrowser, type Look, type Visit, visit } from "./visit.js";

afterAll(closeBrowser);

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** An invented page with a slip that only the page itself can clear up: TW stands where 1W was meant. */
const LINES = [
  "PLOVER RECEIVER, PARTS LIST",
  "R1 Resistor, carbon 470K 1/2W 10%",
  "R2 Resistor, carbon 33K TW 10%",
  "R3 Resistor, carbon 2200 ohms 2W 10%",
  "R4 Resistor, carbon 100K 1/2W 10%",
  "C1 Capacitor, paper .05 mfd 600V",
  "C2 Capacitor, mica 250 mmf 500V",
];
const SHEET = { width: 1800, height: 1400, margin: 160, leading: 2 };

const given = (page: Page) => pane(page).getByRole("region", { name: "As it was given" });
const chosenPlace = (page: Page) => given(page).locator('button[aria-pressed="true"]');

async function bringIn(look: Look, name: string, file: (seen: Visit) => Promise<Uint8Array>): Promise<Visit> {
  const seen = await visit(look);
  const { page } = seen;
  const buffer = Buffer.from(await file(seen));
  await page.bringToFront();
  if ((look.width ?? 1280) < 768) await page.locator("#tabs").getByText("Pane").click();
  await page.getByRole("button", { name: /^List/ }).first().click();
  await page.getByLabel("Take a file").setInputFiles({ name, mimeType: "", buffer });
  await chosenPlace(page).waitFor({ timeout: 60_000 });
  await given(page).locator("img").waitFor();
  await page.waitForTimeout(400);
  return seen;
}

const scan = ({ page }: Visit) => typedPage(page.context(), LINES, SHEET);
const pdf = async () => pdfBytes([LINES.map((text, i) => ({ x: 60, y: 700 - 24 * i, text }))]);

/** Whether what is chosen can be seen: its frame lies within the frame of the page. */
async function isInView(page: Page): Promise<boolean> {
  const [line, frame] = await Promise.all([
    chosenPlace(page).boundingBox(),
    given(page).getByRole("region", { name: /^Page/ }).boundingBox(),
  ]);
  return line!.y >= frame!.y - 1 && line!.y + line!.height <= frame!.y + frame!.height + 1;
}

/** How dark the page is under the chosen frame, 0..1: letters are there, not only paper. */
async function inkUnderFrame(page: Page): Promise<number> {
  return chosenPlace(page).evaluate((button) => {
    const image = button.parentElement!.querySelector("img")!;
    const [box, all] = [button.getBoundingClientRect(), image.getBoundingClientRect()];
    const scale = image.naturalWidth / all.width;
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [box.width * scale, box.height * scale];
    const paint = canvas.getContext("2d")!;
    paint.drawImage(image, (all.left - box.left) * scale, (all.top - box.top) * scale);
    const dots = paint.getImageData(0, 0, canvas.width, canvas.height).data;
    return dots.filter((shade, at) => at % 4 === 0 && shade < 128).length / (dots.length / 4);
  });
}

describe("the page beside its reading", () => {
  test.each([
    ["a scanned page", "page.png", scan],
    ["a PDF", "list.pdf", pdf],
  ])("%s: a line chosen on either side is shown on the other", async (_, name, file) => {
    const { page, errors, strangers, picture, close } = await bringIn({}, name, file);
    await pane(page)
      .getByRole("button", { name: /R3 resistor/ })
      .click();
    await expect.poll(() => chosenPlace(page).getAttribute("aria-label")).toMatch(/^Line 4: R3/);
    await expect.poll(() => isInView(page)).toBe(true);
    expect(await inkUnderFrame(page)).toBeGreaterThan(0.02);
    await given(page)
      .getByRole("button", { name: /^Line 6: C1/ })
      .click();
    await pane(page).getByRole("heading", { name: "Line 6" }).waitFor();
    await picture(`preview-${name}`);
    expect(errors).toEqual([]);
    expect(strangers).toEqual([]);
    await close();
  });

  test("a word in doubt warns its part, is corrected from the page, and the correction is the person's", async () => {
    const { page, picture, cellText, close } = await bringIn({}, "page.png", scan);
    await pane(page).getByRole("heading", { name: "Line 3" }).waitFor();
    await pane(page)
      .getByText(/hard to read: "TW" in the picture/)
      .first()
      .waitFor();
    await pane(page).getByRole("button", { name: "Correct it" }).click();
    await pane(page).getByLabel("Watts of R2").fill("some");
    await pane(page).getByRole("button", { name: "Take it as I read it" }).click();
    await pane(page)
      .getByText(/Can't read "some"/)
      .waitFor();
    await pane(page).getByLabel("Watts of R2").fill("1 W");
    await picture("preview-correct");
    await pane(page).getByRole("button", { name: "Take it as I read it" }).click();
    await pane(page).getByText("checked by you").first().waitFor();
    await pane(page).getByLabel("Short name of the set").fill("PL");
    await pane(page).getByLabel("What it is").fill("Plover");
    await pane(page).getByRole("button", { name: "Write 6 parts to the sheet" }).click();
    await pane(page)
      .getByText(/Done: Write 6 parts/)
      .waitFor();
    expect(await cellText("B3")).toBe("R2");
    await pane(page)
      .getByText(/33 k ±10 % 1 W/)
      .first()
      .waitFor();
    await picture("preview-written");
    await close();
  });

  test("a pasted text stands beside its reading as it was typed", async () => {
    const { page, picture, close } = await visit();
    await page.getByRole("button", { name: /^List/ }).first().click();
    await pane(page).getByLabel("Paste it here, or drop a file").fill(LINES.join("\n"));
    await pane(page).getByRole("button", { name: "See how it is understood" }).click();
    await given(page).getByRole("button", { name: LINES[5]! }).click();
    await pane(page).getByRole("heading", { name: "Line 6" }).waitFor();
    await page.keyboard.press("ArrowUp");
    await pane(page).getByRole("heading", { name: "Line 5" }).waitFor();
    await page.evaluate(() => document.documentElement.style.setProperty("--pane-width", "760px"));
    await picture("preview-text-wide");
    const [text, reading] = await Promise.all([
      given(page).boundingBox(),
      pane(page).getByRole("region", { name: "6 parts in 7 lines" }).boundingBox(),
    ]);
    expect(text!.x + text!.width).toBeLessThanOrEqual(reading!.x);
    await close();
  });

  test("arrow keys go from line to line, and the page follows", async () => {
    const { page, close } = await bringIn({}, "page.png", scan);
    await pane(page)
      .getByRole("button", { name: /R1 resistor/ })
      .focus();
    for (const [key, line] of [
      ["ArrowDown", 4],
      ["ArrowDown", 5],
      ["ArrowUp", 4],
    ] as const) {
      await page.keyboard.press(key);
      await expect.poll(() => chosenPlace(page).getAttribute("aria-label")).toContain(`Line ${line}:`);
    }
    await close();
  });

  test.each<[string, Look]>([
    ["narrow-light", { width: 320, height: 700 }],
    ["narrow-dark", { width: 320, height: 700, dark: true }],
    ["wide-dark", { dark: true }],
  ])("%s: nothing is too small, out of the pane, or out of reach", async (name, look) => {
    const { page, picture, close } = await bringIn(look, "page.png", scan);
    await given(page).scrollIntoViewIfNeeded();
    await picture(`preview-${name}`);
    expect(await pane(page).evaluate((element) => element.scrollWidth <= element.clientWidth)).toBe(true);
    expect((await chosenPlace(page).boundingBox())!.height).toBeGreaterThan(18);
    await page.evaluate(AXE);
    const found = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run: (at: string) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
      };
      return (await axe.run("#pane")).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
    });
    expect(found).toEqual([]);
    await close();
  });
});
