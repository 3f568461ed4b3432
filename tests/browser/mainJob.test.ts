import type { Page } from "playwright-core";
import { afterAll, describe, expect, test } from "vitest";
import { closeBrowser, type Look, type Visit, visit } from "./visit.js";

afterAll(closeBrowser);

const pane = (page: Page) => page.locator("#pane");
const press = (page: Page, name: string | RegExp) => pane(page).getByRole("button", { name }).first().click();
const said = (page: Page, text: string | RegExp) => pane(page).getByText(text).first().waitFor();

/** Opens the sample as a newcomer would. */
async function withSample(look: Look = {}): Promise<Visit> {
  const seen = await visit(look);
  await press(seen.page, "Open the sample");
  await said(seen.page, /Done: Open the sample/);
  return seen;
}

/** Ticks the stops of the set, one by one, and begins. */
async function beginSitting(page: Page): Promise<void> {
  const boxes = pane(page).getByRole("checkbox", { name: /^Stop/ });
  for (const box of await boxes.all()) await box.check();
  await press(page, "All done: begin");
}

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
});
