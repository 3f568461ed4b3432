import type { Page } from "playwright-core";
import { afterAll, describe, expect, test } from "vitest";
import { beginSitting, pane, press, said, withSample } from "./pane.js";
import { closeBrowser } from "./visit.js";

afterAll(closeBrowser);

/** Goes to the bench and ticks the stops of the set. */
async function atBench(page: Page): Promise<void> {
  await press(page, /^Bench/);
  await beginSitting(page);
}

const designator = (page: Page) => pane(page).getByLabel("Designator");
const reading = (page: Page) => pane(page).getByLabel(/^Reading,/);

/** Picks from a list that narrows as one types. */
async function choose(page: Page, label: string, option: string): Promise<void> {
  await pane(page).getByRole("combobox", { name: label }).click();
  await page.keyboard.type(option);
  await page.getByRole("option", { name: option, exact: true }).click();
}

/** Nothing of the pane sticks out, and no letter is under 14 pixels. */
async function fits(page: Page): Promise<void> {
  const found = await pane(page).evaluate((element) => {
    const small = [...element.querySelectorAll("*")].filter(
      (each) =>
        [...each.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim()) &&
        Number.parseFloat(getComputedStyle(each).fontSize) < 14,
    );
    return { over: element.scrollWidth - element.clientWidth, small: small.map((each) => each.textContent) };
  });
  expect(found).toEqual({ over: 0, small: [] });
}

describe("at the bench", () => {
  test.each([
    ["wide", { width: 1280 }],
    ["narrow and dark", { width: 320, height: 700, dark: true }],
  ])("one hand on the number keys reads part after part: %s", async (name, look) => {
    const { page, picture, errors, close } = await withSample(look);
    await atBench(page);
    await reading(page).click();
    await page.keyboard.type("6.9");
    await pane(page)
      .getByRole("img", { name: /^Listed 4.48 Ω to 6.72 Ω; new .*; reads 6.9 Ω, \+23 %/ })
      .waitFor();
    await fits(page);
    await picture(`bench-picture-${name.split(" ")[0]}`);
    await page.keyboard.press("Enter");
    await said(page, /Done: Log R1 6.9 Ω in place. Now to be bought: R1 POWER SUPPLY/);
    await expect.poll(() => designator(page).inputValue()).toBe("R2");
    await page.keyboard.press("+");
    await expect.poll(() => designator(page).inputValue()).toBe("R3");
    await page.keyboard.press("*");
    await page.keyboard.press("/");
    expect(await reading(page).inputValue()).toBe("open");
    await page.keyboard.press("Enter");
    await said(page, /Done: Log R3 open lifted/);
    await said(page, "1 with a lead lifted");
    await press(page, "It is back");
    await said(page, /R3: lead is back/);
    await designator(page).fill("6");
    await designator(page).press("Enter");
    await page.keyboard.type("48");
    await page.keyboard.press("Enter");
    await said(page, /Done: Log R6 48 Ω in place/);
    await said(page, "Drift of the resistors");
    await fits(page);
    expect(errors).toEqual([]);
    await close();
  });

  test("many readings are pasted, understood line by line, and written in one step", async () => {
    const { page, picture, errors, close } = await withSample();
    await atBench(page);
    await press(page, "Paste many readings");
    await pane(page)
      .getByLabel(/^One part a line/)
      .fill("R4\t99\nC1 0.052 leak 3 lifted ±2%\nR77 12k\nSOUND\nR4 612k lifted\n");
    await said(page, "3 understood, 1 not");
    await said(page, "This set has no R77.");
    await picture("bench-paste");
    await press(page, "Log 3 readings");
    await said(page, /Done: Log 3 readings/);
    await said(page, "2 with a lead lifted");
    expect(
      await pane(page)
        .getByLabel(/^One part a line/)
        .inputValue(),
    ).toMatch(/^\s*R77 12k\s*SOUND\s*$/);
    expect(errors).toEqual([]);
    await close();
  });

  test("an hour's break asks the stops again, before the next reading", async () => {
    const { page, close } = await withSample();
    await atBench(page);
    const now = await page.evaluate(() => Date.now());
    await page.clock.setFixedTime(now + 61 * 60 * 1000);
    await reading(page).click({ noWaitAfter: true });
    await said(page, "Before a hand goes in");
    expect(await reading(page).count()).toBe(0);
    await close();
  });
});

test("a use for many rows says what it changes, takes marked rows, and changes them in one step", async () => {
  const { page, picture, errors, close } = await withSample();
  await press(page, /^Parts/);
  const which = pane(page).getByLabel("Which parts");
  await which.selectOption({ label: "resistors of 470 k (6)" });
  await choose(page, "Used as", "Screen dropper");
  await said(page, /answers? of 6 would change/);
  await picture("use-for-many");
  await press(page, /^Give 6 rows the use Screen dropper/);
  await said(page, /Done: Give 6 rows the use Screen dropper/);
  await page
    .locator(".o-grid-overlay")
    .first()
    .click({ position: { x: 150, y: 60 } });
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  await press(page, "Take the rows marked in the sheet");
  await said(page, "3 parts ticked");
  expect(errors).toEqual([]);
  await close();
});

test("a rule changed in the pane shows the parts it changes, before and after, and is taken back", async () => {
  const { page, picture, errors, close } = await withSample();
  await press(page, /^Rules/);
  await choose(page, "Type or use", "Carbon composition resistor");
  await pane(page).getByLabel("replace the known bad").first().selectOption("replace");
  await press(page, /^Change it: \d+ parts change/);
  await said(page, "The rules changed");
  await said(page, "Carbon composition resistor, replace the known bad: test becomes replace");
  await picture("rules-changed");
  await press(page, "Take it back");
  await expect.poll(() => pane(page).getByText("The rules changed").count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
