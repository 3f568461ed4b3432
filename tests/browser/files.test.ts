import { afterAll, describe, expect, test } from "vitest";
import { pdfBytes } from "../sources/pdfBytes.js";
import { workbookBytes } from "../sources/workbookBytes.js";
import { typedPage } from "./typedPage.js";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

const LIST = ["R1 470K 1/2W 10%", "R2 1.2 meg 1W", "C1 .05 mfd 600V paper"];
const ROWS = LIST.map((line, i) => {
  const [name, ...words] = line.split(" ");
  const cells = [name, words.join(" ")].map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`);
  return `<row r="${i + 1}">${cells.join("")}</row>`;
});

describe("a file is read on the page, in a thread of its own", () => {
  test.each([
    ["list.txt", () => new TextEncoder().encode(LIST.join("\n"))],
    ["list.xlsx", () => workbookBytes(ROWS.join(""), [])],
    ["list.pdf", () => pdfBytes([LIST.map((text, i) => ({ x: 60, y: 700 - 20 * i, text }))])],
  ])("%s", async (name, bytes) => {
    const { page, errors, strangers, picture, close } = await visit();
    await page.getByRole("button", { name: /^List/ }).first().click();
    await page.getByLabel("Take a file").setInputFiles({ name, mimeType: "", buffer: Buffer.from(bytes()) });
    await page
      .locator("#pane")
      .getByText(/then 3 parts can be written/)
      .waitFor({ timeout: 20_000 });
    await picture(`file-${name}`);
    expect(strangers).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  test("a scanned page", async () => {
    const { page, errors, strangers, picture, close } = await visit();
    const buffer = await typedPage(page.context(), LIST, { width: 1600, height: 700, margin: 150, leading: 2 });
    await page.bringToFront();
    await page.getByRole("button", { name: /^List/ }).first().click();
    await page.getByLabel("Take a file").setInputFiles({ name: "page.png", mimeType: "image/png", buffer });
    await page
      .locator("#pane")
      .getByText(/then 3 parts can be written/)
      .waitFor({ timeout: 60_000 });
    await picture("file-page.png");
    expect(strangers).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });

  test("a file that is no list says so", async () => {
    const { page, close } = await visit();
    await page.getByRole("button", { name: /^List/ }).first().click();
    const buffer = Buffer.from(Array.from({ length: 4000 }, (_, i) => (i * 7919) % 256));
    await page.getByLabel("Take a file").setInputFiles({ name: "noise.txt", mimeType: "", buffer });
    await page
      .getByText(/It is not text/)
      .first()
      .waitFor({ timeout: 20_000 });
    await close();
  });
});
