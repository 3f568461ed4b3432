import type { Page } from "playwright-core";
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
