import type { Page } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { pane, press } from "./pane.js";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

const LINES = 10_000;

/** An invented list of ten thousand lines, the last but one of them not to be read. */
const list = () =>
  Array.from({ length: LINES }, (_, i) =>
    i === LINES - 2 ? `R${i + 1}  2M2M ohms` : `R${i + 1}  ${i + 1} ohms 1/2 W`,
  );

/** Keeps what the pane tells of the work, which a quick machine shows for a blink only; gives what was told last. */
async function progressTold(page: Page): Promise<() => Promise<string>> {
  await page.evaluate(() => {
    const keep = () => {
      const told = /finding out what the lines mean, \d+ %/.exec(document.body.textContent ?? "")?.[0];
      if (told) document.body.dataset.told = told;
    };
    new MutationObserver(keep).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  return () => page.evaluate(() => document.body.dataset.told ?? "");
}

test("a list of ten thousand lines is read aside: it tells how far it is, is shown in parts, and read anew as the person says", async () => {
  const { page, errors, picture, close } = await visit();
  const given = pane(page).getByRole("region", { name: "As it was given" });
  const buffer = Buffer.from(list().join("\n"));
  await press(page, /^List/);
  const told = await progressTold(page);
  await page.getByLabel("Take a file").setInputFiles({ name: "long.txt", mimeType: "", buffer });
  await given.waitFor();
  expect(await told()).toMatch(/^finding out what the lines mean, \d+ %$/);
  const reading = pane(page).getByRole("region", { name: /parts in 10000 lines/ });
  await reading.getByText("1 to 200 of 10000").waitFor();
  await picture("long-list-first");
  await reading.getByRole("button", { name: "Those after" }).click();
  await reading.getByText("201 to 400 of 10000").waitFor();
  expect(await reading.locator("li").count()).toBe(200);
  await reading.getByRole("button", { name: /R250 resistor/ }).click();
  await given.getByRole("button", { name: "R250  250 ohms 1/2 W", pressed: true }).waitFor();
  await reading.getByText("201 to 400 of 10000").waitFor();
  await pane(page).getByLabel("Short name of the set").fill("LL");
  await pane(page).getByLabel("What it is").fill("A long list");
  const write = pane(page).getByRole("button", { name: /^Write \d+ parts to the sheet/ });
  await pane(page).getByLabel("Year of the set").fill("1936");
  expect(await write.isDisabled()).toBe(true);
  await expect.poll(() => write.isEnabled(), { timeout: 60_000 }).toBe(true);
  expect(errors).toEqual([]);
  await close();
});
