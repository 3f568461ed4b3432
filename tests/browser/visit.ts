import { mkdirSync } from "node:fs";
import path from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { inject } from "vitest";

const PICTURES = path.resolve(import.meta.dirname, "../../.tmp/pictures");

/** A place for files that a test saves. */
export const savedFile = (name: string) => path.join(PICTURES, name);

/** How the page is looked at. */
export type Look = { readonly width?: number; readonly height?: number; readonly dark?: boolean };

/** A visit to the page in a fresh profile, with everything noted that should not happen. */
export type Visit = {
  readonly page: Page;
  /** Errors in the console and uncaught ones. */
  readonly errors: string[];
  /** Addresses asked for outside the page's own server. */
  readonly strangers: string[];
  /** Takes a picture into .tmp/pictures, for a person to look at. */
  readonly picture: (name: string) => Promise<void>;
  /** Types into a cell of the sheet in front and presses Enter. */
  readonly typeInCell: (cell: string, text: string) => Promise<void>;
  /** What a cell of the sheet in front shows, as copied from it. */
  readonly cellText: (cell: string) => Promise<string>;
  /** Brings a sheet to the front. */
  readonly showSheet: (name: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

let browser: Promise<Browser> | null = null;

function theBrowser(): Promise<Browser> {
  const chrome = inject("chrome");
  browser ??= chromium.launch({
    executablePath: chrome.path,
    env: chrome.env,
    args: ["--no-sandbox", "--disable-dev-shm-usage"],
  });
  return browser;
}

/** Ends the browser; to be called once when a file's tests are done. */
export async function closeBrowser(): Promise<void> {
  await (await browser)?.close();
  browser = null;
}

/** Opens the page and waits until it can be worked with. */
export async function visit({ width = 1280, height = 800, dark = false }: Look = {}): Promise<Visit> {
  const context = await (await theBrowser()).newContext({
    viewport: { width, height },
    colorScheme: dark ? "dark" : "light",
    permissions: ["clipboard-read", "clipboard-write"],
  });
  const page = await context.newPage();
  const [errors, strangers]: [string[], string[]] = [[], []];
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("request", (request) => {
    const isOurs = request.url().startsWith(inject("address")) || /^(data|blob):/.test(request.url());
    if (!isOurs) strangers.push(request.url());
  });
  await page.goto(inject("address"));
  await page.waitForSelector("body[data-ready]", { timeout: 15_000 }).catch((error) => {
    throw new Error(`The page did not open: ${errors.join("; ") || error}`);
  });
  mkdirSync(PICTURES, { recursive: true });
  return {
    page,
    errors,
    strangers,
    picture: async (name) => void (await page.screenshot({ path: path.join(PICTURES, `${name}.png`) })),
    typeInCell: (cell, text) => typeInCell(page, cell, text),
    cellText: (cell) => cellText(page, cell),
    showSheet: (name) => page.locator(".o-sheet", { hasText: new RegExp(`^\\s*${name}\\s*$`) }).click(),
    close: () => context.close(),
  };
}

async function goTo(page: Page, cell: string): Promise<void> {
  const [, letters, row] = /^([A-Z])(\d+)$/.exec(cell)!;
  await page
    .locator(".o-grid-overlay")
    .first()
    .click({ position: { x: 20, y: 10 } });
  await page.keyboard.press("Control+Home");
  for (let i = 1; i < Number(row); i++) await page.keyboard.press("ArrowDown");
  for (let i = 65; i < letters!.charCodeAt(0); i++) await page.keyboard.press("ArrowRight");
}

async function typeInCell(page: Page, cell: string, text: string): Promise<void> {
  await goTo(page, cell);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

const NOTHING_COPIED = "nothing copied yet";

/** Copying takes the grid a moment. */
async function cellText(page: Page, cell: string): Promise<string> {
  await page.evaluate((text) => navigator.clipboard.writeText(text), NOTHING_COPIED);
  await goTo(page, cell);
  await page.keyboard.press("Control+C");
  for (let tries = 0; tries < 100; tries++) {
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    if (copied !== NOTHING_COPIED) return copied;
    await page.waitForTimeout(20);
  }
  throw new Error(`Nothing could be copied from ${cell}.`);
}
