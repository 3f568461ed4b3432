import { afterAll, describe, expect, test } from "vitest";
import { pane, press, said, withSample } from "./pane.js";
import { closeBrowser, type Look, type Visit } from "./visit.js";

afterAll(closeBrowser);

/** The sample with its order planned and written. */
async function withPlan(look: Look = {}): Promise<Visit> {
  const seen = await withSample(look);
  const { page } = seen;
  await press(page, /^Order/);
  await press(page, /^Plan \d+ lines/);
  await page.getByRole("button", { name: /^Write an order of/ }).waitFor({ timeout: 60_000 });
  return seen;
}

describe("ordering on the page", () => {
  test("says where the cheapest goods are not taken and why, and what an offer gone would change", async () => {
    const { page, picture, errors, close } = await withPlan();
    await said(page, /cheaper, but/);
    await said(page, /USD in all/);
    await picture("order-why");
    await pane(page)
      .getByText(/what if one is gone/)
      .click();
    await press(page, "What if Corwen Supply CW-516 is gone");
    await press(page, /^Plan \d+ lines/);
    await pane(page)
      .getByText(/than the plan in force/)
      .first()
      .waitFor({ timeout: 60_000 });
    await pane(page).getByRole("region", { name: "Against the plan in force" }).scrollIntoViewIfNeeded();
    await picture("order-what-if");
    expect(errors).toEqual([]);
    await close();
  });

  test("an order becomes a sheet for each vendor; a part delivery is counted, and what came is measured", async () => {
    const { page, picture, showSheet, errors, close } = await withPlan();
    await press(page, /^Write an order of/);
    await said(page, /Done: Write an order/);
    await press(page, /^Write a sheet for each vendor/);
    await said(page, /Done: Write the order sheets/);
    await showSheet("Who gets what");
    await picture("order-who");
    await press(page, "to order");
    await page.getByRole("menuitem", { name: "on the way" }).click();
    const here = pane(page)
      .getByLabel(/^Pieces here, of \d+/)
      .first();
    await here.fill("1");
    await press(page, /1 of \d+ here$/);
    await said(page, /1 of \d+ pieces here, \d+ to come/);
    await press(page, "Measure what came");
    await pane(page)
      .getByText(/Measure what came/)
      .first()
      .scrollIntoViewIfNeeded();
    await picture("order-delivery");
    expect(errors).toEqual([]);
    await close();
  });

  test("all of it can be read on a narrow screen", async () => {
    const { page, picture, close } = await withPlan({ width: 320, height: 900, dark: true });
    const wide = await page.evaluate(() => document.querySelector("#pane")!.scrollWidth);
    expect(wide).toBeLessThanOrEqual(320);
    await pane(page).getByRole("region", { name: "The plan" }).scrollIntoViewIfNeeded();
    await picture("order-narrow");
    await pane(page).getByRole("region", { name: "Money" }).scrollIntoViewIfNeeded();
    await picture("order-money-narrow");
    await close();
  });
});
