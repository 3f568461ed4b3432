import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { close } from "../../../src/core/quantity/close.js";
import { readList } from "../../../src/core/read/readList.js";
import { readPartNumbers } from "../../../src/core/read/readPartNumbers.js";
import { plainNumber } from "../../../src/core/read/records/partNumbers.js";
import { readSource } from "../../../src/sources/readSource.js";
import { readText } from "./readText.js";

const tableOf = async (text: string) =>
  readPartNumbers((await readSource("table.csv", new TextEncoder().encode(text))).lines);

describe("a table of part numbers", () => {
  test.each([
    ["typed with gaps", "61-0745  2.2 meg 1/2 W\n61-0746  470 k"],
    ["typed with one blank", "61-0745 2.2 meg 1/2 W\n61-0746 470 k"],
    ["CSV without heads", "61-0745,2.2 meg 1/2 W\n61-0746,470 k"],
    ["CSV with heads, the number in the middle", "Item,Part No.,Value\n,61-0745,2.2 meg 1/2 W\n,61-0746,470 k"],
    [
      "makers and prices left aside",
      "P/N;Value;Maker;Price\n61-0745;2.2 meg 1/2 W;Orrin;0.12\n61-0746;470 k;Orrin;0.1",
    ],
  ])("%s", async (_form, text) => {
    const { rows, refused } = await tableOf(text);
    expect(rows).toEqual([
      { number: "61-0745", description: "2.2 meg 1/2 W" },
      { number: "61-0746", description: "470 k" },
    ]);
    expect(refused).toEqual([]);
  });

  test("a line without a number, or with nothing beside it, is said", async () => {
    const { refused } = await tableOf("61-0745  2.2 meg\n61-0746\nsee page two  of the book");
    expect(refused.map(({ line }) => line)).toEqual([2, 3]);
  });
});

describe("a list that gives part numbers in place of values", () => {
  const table = new Map(
    [
      ["61-0745", "2.2 meg ±5 % 1 W"],
      ["64-0012", ".05 mfd 400 V paper"],
    ].map(([number, text]) => [plainNumber(number!), text!] as const),
  );
  const LIST =
    "Symbol\tPart No.\tDescription\nR1\t61-0745\tresistor\nC1\t64-0012\tcapacitor, 600 V\nR2\t61-0999\tresistor\nR3\t61-0745\tresistor, 470K";
  const { parts, numbersWithoutValue } = readText(LIST, { partNumbers: table }, "\t");
  const [r1, c1, r2, r3] = parts;

  test("takes value and ratings from the table, and says so", () => {
    expect(r1).toMatchObject({
      value: 2_200_000,
      watts: 1,
      tolerance: { minus: 0.05, plus: 0.05 },
      valueState: "stated",
    });
    expect(r1!.from.value).toEqual({ by: "reference", at: "part number 61-0745" });
  });

  test("keeps what it prints itself", () => {
    expect(c1).toMatchObject({ volts: 600, dielectric: "paper" });
    expect(c1!.value).toBeCloseTo(5e-8, 15);
    expect(r3).toMatchObject({ value: 470_000, watts: 1 });
  });

  test("says nothing of numbers that only serve to order by", () => {
    const text = "Symbol\tPart No.\tValue\nR1\t9-1\t470K\nR2\t9-2\t47K\nL1\t9-3\t";
    expect(readText(text, {}, "\t").numbersWithoutValue).toEqual([]);
  });

  test("says the numbers that the table does not tell", () => {
    expect(r2!.value).toBeNull();
    expect(numbersWithoutValue).toEqual(["61-0999"]);
  });
});

/**
 * Drawings of a flight computer of the 1960s (public domain) and the table of its part numbers, kept beside the project: with
 * every printed value taken out, the numbers alone have to tell what was printed there.
 */
const DRAWINGS = path.resolve(import.meta.dirname, "../../../../shared/lists");
const here = existsSync(path.join(DRAWINGS, "agc-tables.json"));

test.skipIf(here)("no drawings beside the project: a real table of part numbers is not tried", () => {});

test.skipIf(!here)("part numbers of real drawings tell the values that were printed beside them", async () => {
  const numbers = await readSource("table.csv", readFileSync(path.join(DRAWINGS, "agc/MITcomponents.csv")));
  const partNumbers = new Map(
    readPartNumbers(numbers.lines).rows.map(({ number, description }) => [plainNumber(number), description]),
  );
  const { files } = JSON.parse(readFileSync(path.join(DRAWINGS, "agc-tables.json"), "utf8")) as {
    files: Record<string, readonly { line: number; designator: string; value: number }[]>;
  };
  const told = Object.entries(files).flatMap(([file, rows]) => {
    const { parts } = readList(withoutValues(readFileSync(path.join(DRAWINGS, "agc", file), "utf8")), { partNumbers });
    return rows.map(({ line, designator, value }) => {
      const part = parts.find(({ lines, designators }) => lines.includes(line) && designators.includes(designator));
      return { value, told: part?.value ?? null };
    });
  });
  const wrong = told.filter((each) => each.told !== null && !close(each.told, each.value, 1e-3));
  expect(wrong).toEqual([]);
  expect(told.filter((each) => each.told !== null).length).toBeGreaterThan(0.99 * told.length);
});

/** A drawing's table with its column of values emptied. */
function withoutValues(text: string) {
  const rows = text.split("\n").map((line) => line.split("\t"));
  const place = rows[0]!.indexOf("VALUE");
  return rows.map((row, at) => {
    const cells = at === 0 ? row : row.map((cell, column) => (column === place ? "" : cell));
    return { number: at + 1, text: cells.join("\t"), cells };
  });
}
