import { afterAll, describe, expect, test } from "vitest";
import { readSource } from "../../src/sources/readSource.js";
import { typedPage } from "./typedPage.js";
import { closeBrowser, visit } from "./visit.js";

afterAll(closeBrowser);

/** An A4 page at 300 dots per inch. */
const A4 = { width: 2480, height: 3508, margin: 200, leading: 1.6 };
const VALUES = ["470K", "1.2 meg", "2200", "47K", ".05 mfd", "250 mmf", "33K", "10 meg", "6800", "100K"];
const WATTS = ["1/2W", "1W", "2W", "1/2W", "600V", "500V", "1W", "1/2W", "10W", "2W"];
const LINES = Array.from({ length: 42 }, (_, i) => {
  const [value, watts] = [VALUES[i % 10]!, WATTS[i % 10]!];
  const part = watts.endsWith("V") ? `C${i + 1} Capacitor, paper` : `R${i + 1} Resistor, carbon`;
  return `${part}, ${value} ${watts} 10%`;
});

async function cleanPage(): Promise<Uint8Array> {
  const { page, close } = await visit();
  const picture = await typedPage(page.context(), LINES, A4);
  await close();
  return picture;
}

/** Characters to change to make one text the other. @see Levenshtein's distance, any textbook */
function changes(a: string, b: string): number {
  let before = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      row.push(Math.min(before[j]! + 1, row[j - 1]! + 1, before[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    before = row;
  }
  return before[b.length]!;
}

describe("a scanned page", () => {
  test("is read with at most one wrong character in a hundred, and no watt figure is wrong in silence", async () => {
    const progress: number[] = [];
    const { lines, doubtful, places } = await readSource("page.png", await cleanPage(), {
      onProgress: (done) => progress.push(done),
    });
    const squeezed = (text: string) => text.toLowerCase().replace(/\s+/g, " ");
    const wanted = squeezed(LINES.join("\n"));
    const got = squeezed(lines.map((line) => line.text).join("\n"));
    const rate = changes(wanted, got) / wanted.length;
    console.log(`character error without case ${(rate * 100).toFixed(2)} %, ${doubtful.length} words in doubt`);
    expect(rate).toBeLessThanOrEqual(0.01);
    expect(lines).toHaveLength(LINES.length);
    const silent = LINES.filter((line, i) => {
      const watts = /(\S+w)\b/i.exec(line)?.[1]?.toLowerCase();
      const isRight = !watts || squeezed(lines[i]!.text).split(" ").includes(watts);
      return !isRight && !doubtful.some((word) => word.line === i + 1);
    });
    expect(silent).toEqual([]);
    expect(Math.max(...progress)).toBeGreaterThan(0.5);
    expect(places[0]!.top).toBeLessThan(places[41]!.top);
  });
});
