import { chromium, type Page } from "playwright-core";
import { DEFAULTS_IN_FORCE, readDocument } from "../../src/core/index.js";
import { readyChrome } from "../browser/setup/chrome.js";
import { servePage } from "../browser/setup/site.js";
import { linesOfList } from "./linesOfList.js";
import type { Bench, Row } from "./measure.js";

const LINES = 10_000;
const FILE = { name: "long.txt", mimeType: "", buffer: Buffer.from(linesOfList(LINES).join("\n")) };

/** Longer than this and a hand notices that the page does not follow (common practice). */
const NOTICED = 0.1;

/** Notes how long the page stands still, as the browser tells it: tasks of more than 50 ms. */
function noteStills(): void {
  const stills: number[] = [];
  Object.assign(window, { stills });
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) stills.push(duration / 1000);
  }).observe({ entryTypes: ["longtask"] });
}

/** Does something on the page, and tells the longest time for which it stood still meanwhile. */
async function longestStill(page: Page, act: () => Promise<void>): Promise<number> {
  const told = () => page.evaluate(() => (window as unknown as { stills: number[] }).stills.splice(0));
  await page.waitForTimeout(300);
  await told();
  await act();
  await page.waitForTimeout(300);
  return Math.max(0, ...(await told()));
}

/** What a person does with a long list, and what the page is like meanwhile. */
function rowsOf(page: Page): readonly Row[] {
  const pane = page.locator("#pane");
  const back = async () => {
    const button = pane.getByRole("button", { name: "Back to the text" });
    if (await button.isVisible()) await button.click();
    await pane.getByLabel("Paste it here, or drop a file").waitFor();
  };
  const show = async () => {
    await page.getByLabel("Take a file").setInputFiles(FILE);
    await pane.getByText(`1 to 200 of ${LINES}`).waitFor();
  };
  const answer = async () => {
    const open = pane.getByRole("radio", { name: /thousand|million/ }).and(pane.locator(":not(:checked)"));
    await open.first().click();
    await pane.getByText(/finding out what the lines mean/).waitFor();
    await pane.getByText(/finding out what the lines mean/).waitFor({ state: "detached" });
  };
  const shown = "a file of 10,000 lines: chosen, read and shown";
  const answered = "the same read anew after another answer on M";
  const still = "... the longest the page stood still";
  const alone = "10,000 lines understood alone, without a page";
  const lines = linesOfList(LINES).map((text, i) => ({ number: i + 1, text, cells: null }));
  const answers = { capitalM: null, era: null, inForce: DEFAULTS_IN_FORCE };
  return [
    { what: alone, count: LINES, run: () => readDocument(lines, answers) },
    { what: shown, count: LINES, before: back, run: show, comparedWith: alone, goal: { median: 1 } },
    { what: still, count: 1, before: back, seconds: () => longestStill(page, show), goal: { median: NOTICED } },
    { what: answered, count: LINES, run: answer, comparedWith: alone, goal: { median: 1 } },
    { what: still, count: 1, seconds: () => longestStill(page, answer), goal: { median: NOTICED } },
  ];
}

/** A long list on the page, in the browser that the tests use. */
export const bench: Bench = {
  title: "a long list on the page, in Chromium",
  rows: async () => {
    const chrome = await readyChrome();
    const site = await servePage();
    const browser = await chromium.launch({
      executablePath: chrome.path,
      env: chrome.env,
      args: ["--no-sandbox", "--disable-dev-shm-usage"],
    });
    const page = await browser.newPage();
    await page.goto(site.address);
    await page.waitForSelector("body[data-ready]");
    await page.evaluate(noteStills);
    await page.locator("#pane").getByRole("button", { name: /^List/ }).first().click();
    return rowsOf(page);
  },
};
