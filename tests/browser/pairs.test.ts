import { readFileSync } from "node:fs";
import path from "node:path";
import type { Locator } from "playwright-core";
import { afterAll, expect, test } from "vitest";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

const FIXTURES = path.resolve(import.meta.dirname, "../core/crosswalk/fixtures");
const list = (name: string) => readFileSync(path.join(FIXTURES, name), "utf8");

/** Pastes a list, names it, and writes it to the sheet. */
async function bringIn(pane: Locator, text: string, names: Readonly<Record<string, string>>): Promise<void> {
  const tab = pane.getByRole("button", { name: /^List/ }).first();
  await ((await tab.count()) > 0 ? tab : pane.getByRole("button", { name: "Bring in a parts list" }).first()).click();
  await pane.getByLabel("Paste it here, or drop a file").fill(text);
  await pane.getByRole("button", { name: "See how it is understood" }).click();
  for (const [label, written] of Object.entries(names)) await pane.getByLabel(label).fill(written);
  await pane.getByRole("button", { name: /^Write \d+ parts/ }).click();
}

const FACTORY = {
  "Short name of the set": "DM",
  "What it is": "Dunmarrow 97",
  "Name of this document": "factory list",
};

test("two lists of one set are compared, confirmed and counted once, and the lists' difference stays on the card", async () => {
  const { page, picture, errors, close } = await visit();
  const pane = page.locator("#pane");
  await bringIn(pane, list("console.factory.txt"), FACTORY);
  await pane.getByText(/^48 parts:/).waitFor();
  await bringIn(pane, list("console.service.txt"), { "Name of this document": "digest" });
  await pane.getByRole("button", { name: "Compare the lists" }).click();
  await pane.getByText(/0 pairs confirmed, 4\d open/).waitFor();
  await picture("pairs-open");
  await pane.getByText("The lists differ: watts 2 W in factory list (the safer), 1 W in digest").waitFor();
  await pane.getByRole("button", { name: /^Confirm \d+ pairs$/ }).click();
  await pane.getByText(/4\d pairs confirmed/).waitFor();
  await picture("pairs-confirmed");
  const counted = async () => Number.parseInt((await pane.getByText(/^\d+ parts:/).textContent()) ?? "", 10);
  const before = await counted();
  await pane.getByRole("button", { name: "Take back: R13 and R401" }).click();
  await pane.getByText(/^Done: Take back what was said of R13 and R401/).waitFor();
  expect(await counted()).toBe(before + 1);
  await pane.getByRole("button", { name: "Same part: R13 and R401" }).click();
  await pane.getByText(/^Done: Confirm R13 and R401/).waitFor();
  expect(errors).toEqual([]);
  await close();
});

test("a list that gives part numbers in place of values is read by the numbers pasted, and again from its lines", async () => {
  const { page, picture, errors, close } = await visit({ width: 320, height: 700, dark: true });
  const pane = page.locator("#pane");
  await page
    .getByRole("button", { name: "Pane" })
    .or(page.getByRole("tab", { name: "Pane" }))
    .first()
    .click();
  await bringIn(pane, "R1  61-0745  resistor, 1/2 W\nR2  61-0746  resistor, 470K", FACTORY);
  await pane.getByText(/Your part numbers do not tell what 61-0745 is/).waitFor();
  await pane.getByRole("button", { name: /^List/ }).first().click();
  await pane.getByLabel("Paste numbers and what they stand for").fill("61-0745  2.2 meg 5 %");
  await pane.getByRole("button", { name: "See the numbers" }).click();
  await pane.getByRole("button", { name: "Write 1 part number" }).click();
  await pane.getByText(/^Done: Write 1 part number/).waitFor();
  await picture("part-numbers-320-dark");
  await pane.getByRole("button", { name: "factory list of DM, 2 lines" }).click();
  await pane.getByRole("button", { name: "Write 0 parts to the sheet, 2 read again" }).click();
  await pane.getByText(/^Done: Write 0 parts to the sheet, 2 read again\.$/).waitFor();
  expect(errors).toEqual([]);
  await close();
});
