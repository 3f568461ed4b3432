import { afterAll, expect, test } from "vitest";
import { keptWith } from "./pane.js";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

const ROWS = 100_000;
const DAMAGED = 100;
const VALUES = ["100", "1000", "2200", "22K", "100K", "470K", "1M", "2.2M"];

/** An invented list of 100,000 rows, one in a thousand damaged. */
function longList(): Buffer {
  const row = (i: number) =>
    i % (ROWS / DAMAGED) === 5
      ? `B-${i},RES ?? OHM,1,0.10`
      : `B-${i},"RES ${VALUES[i % 8]} OHM 5% ${(i % 3) + 1}W METAL FILM, AXIAL",${i % 900},${((i % 90) / 100 + 0.05).toFixed(2)}`;
  return Buffer.from(
    ["Order No,Description,Stock,Price", ...Array.from({ length: ROWS }, (_, i) => row(i))].join("\n"),
  );
}

test("a list of 100,000 rows is taken in, its columns corrected, searched, kept over a visit, and forgotten", async () => {
  const { page, errors, picture, close } = await visit();
  const pane = page.locator("#pane");
  const press = (name: string | RegExp) => pane.getByRole("button", { name }).first().click();
  const said = (text: string | RegExp) => pane.getByText(text).first().waitFor({ timeout: 90_000 });
  await press("Open the sample");
  await said(/Done: Open the sample/);
  await press(/^Vendors/);
  const chooser = page.waitForEvent("filechooser");
  await press("Take the list");
  await (await chooser).setFiles({ name: "Brellin 2026-11.csv", mimeType: "text/csv", buffer: longList() });
  await said(/rows tried/);
  expect(await pane.getByRole("combobox", { name: "Vendor" }).inputValue()).toBe("Brellin");
  await pane.getByRole("combobox", { name: "Stock is" }).selectOption("nothing");
  await pane
    .getByRole("combobox", { name: "Stock is" })
    .and(page.locator(":has(option:checked[value=nothing])"))
    .waitFor();
  await picture("long-list-columns");
  await press(/^Read all 100,001 lines/);
  await said(/99,900 offers and 100 refused rows out of 100,001 lines/);
  await said(/Done: Take in the list of Brellin/);
  await press("Show refused rows");
  await said(/row 7: B-5, RES \?\? OHM, 1, 0.10 \(it cannot be read\)/);
  await picture("long-list-taken");
  await press(/^Find offers for/);
  await said(/Done: Find offers/);
  await keptWith(page, "Brellin");
  await page.reload();
  await page.waitForSelector("body[data-ready]");
  await press(/^Vendors/);
  await said(/Brellin: 99,900 offers/);
  expect(await pane.getByText("Order No: stock number; Description: description; Price: price").count()).toBe(1);
  await press("Forget the list of Brellin");
  await said(/The whole list is not in this browser/);
  expect(errors).toEqual([]);
  await close();
}, 240_000);
