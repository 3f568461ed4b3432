import { describe, expect, test } from "vitest";
import { openBook } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { listSource, pastedSource, previewList } from "../../src/commands/previewList.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { listReader } from "../../src/sources/reader.js";
import { RULES, TARGET } from "./aList.js";

const { read, understand } = listReader(() => performance.now());
const ANSWERS = { capitalM: null, era: null, inForce: RULES };

describe("what is no parts list", () => {
  test.each<[string, string, RegExp]>([
    ["nothing at all", "", /empty|blank/i],
    ["blank lines only", "\n  \n\n", /blank/i],
  ])("%s is said", async (_, text, words) => {
    await expect(pastedSource(read, text)).rejects.toThrow(words);
  });

  test("binary data is said, and nothing of it is run", async () => {
    const bytes = Uint8Array.from({ length: 4000 }, (_, i) => (i * 37) % 256);
    await expect(listSource(read, "photo.bin", bytes)).rejects.toThrow(/photo\.bin/);
  });

  test("a hundred thousand lines are refused with how many can be read", async () => {
    const text = "R1 470K 1/2 W\n".repeat(100_000);
    await expect(pastedSource(read, text)).rejects.toThrow(/100000 lines.*20000/);
  });

  test("nothing but prose has no parts, and says what would have worked", async () => {
    const text = "Dear Sir,\nwe thank you for your letter and remain\nyours truly\n";
    const source = await pastedSource(read, text);
    await expect(previewList(understand, source, ANSWERS)).rejects.toThrow(/R7 {2}470K/);
  });
});

describe("texts that look like formulas", () => {
  test.each(["=1+41", "+1", "@SUM(1)", "=cmd|' /C calc'!A0", "-2"])("%s lands in its cell as text", async (nasty) => {
    const { host } = embeddedWorkbook(new Model());
    const source = await pastedSource(read, `PARTS LIST\nR1  470K  1/2 W\n${nasty}\n`);
    await doStep(host, bringInListStep(await openBook(host), await previewList(understand, source, ANSWERS), TARGET));
    const cells = (await host.read("Lines"))!.rows.flat();
    expect(cells.filter(({ formula }) => formula !== null)).toEqual([]);
    expect(cells.some(({ value }) => value === nasty)).toBe(true);
  });
});
