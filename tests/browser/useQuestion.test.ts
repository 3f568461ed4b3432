import { afterAll, expect, test } from "vitest";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

test("a part of open use asks what it does, and a choice changes what is fitted", async () => {
  const { page, picture, errors, close } = await visit();
  const pane = page.locator("#pane");
  await pane.getByRole("button", { name: "Open the sample" }).first().click();
  await pane
    .getByText(/Done: Open the sample/)
    .first()
    .waitFor();
  await pane
    .getByRole("button", { name: /^Parts/ })
    .first()
    .click();
  const question = pane.getByText(/^What does .* do\?$/).first();
  await page
    .locator(".o-grid-overlay")
    .first()
    .click({ position: { x: 150, y: 345 } });
  for (let i = 0; i < 12 && (await question.count()) === 0; i++) {
    await page.keyboard.press("ArrowDown");
    await page.waitForTimeout(300);
  }
  await question.waitFor({ timeout: 10_000 });
  await question.scrollIntoViewIfNeeded();
  await picture("use-question");
  await pane
    .getByRole("button", { name: /^(Across the line|Screen dropper|Grid, screen)/ })
    .first()
    .click();
  await pane
    .getByText(/Done: Give/)
    .first()
    .waitFor();
  await picture("use-answered");
  expect(errors).toEqual([]);
  await close();
});
