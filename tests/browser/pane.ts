import type { Page } from "playwright-core";
import { expect } from "vitest";
import { type Look, type Visit, visit } from "./visit.js";

/** The side pane. */
export const pane = (page: Page) => page.locator("#pane");

/** Presses a button of the pane, as its label says. */
export const press = (page: Page, name: string | RegExp) => pane(page).getByRole("button", { name }).first().click();

/** Waits until the pane says something. */
export const said = (page: Page, text: string | RegExp) => pane(page).getByText(text).first().waitFor();

/** Opens the sample as a newcomer would. */
export async function withSample(look: Look = {}): Promise<Visit> {
  const seen = await visit(look);
  await press(seen.page, "Open the sample");
  await said(seen.page, /Done: Open the sample/);
  return seen;
}

/** Ticks the stops of the set, one by one, and begins. */
export async function beginSitting(page: Page): Promise<void> {
  const boxes = pane(page).getByRole("checkbox", { name: /^Stop/ });
  for (const box of await boxes.all()) await box.check();
  await press(page, "All done: begin");
}

/** Waits until the browser keeps a workbook in which a text stands: it is kept some time after each change. */
export const keptWith = (page: Page, text: string) =>
  expect.poll(async () => JSON.stringify(await keptWorkbook(page)), { timeout: 60_000 }).toContain(text);

const keptWorkbook = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open("underchassis"));
    const workbook = await answer(database.transaction("workbooks").objectStore("workbooks").get("current"));
    database.close();
    return workbook;
  });
