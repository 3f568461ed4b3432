import { readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Offer, readOffers } from "../../../../src/core/index.js";
import { readSource } from "../../../../src/sources/readSource.js";
import { readText } from "../../../../src/sources/text.js";
import { EXPECTED } from "./expectedRows.js";

const FIXTURES = path.resolve(import.meta.dirname, "fixtures");

async function listNamed(name: string) {
  const { lines } = await readSource(name, readFileSync(path.join(FIXTURES, name)));
  return readOffers(lines, { vendor: name });
}

/** What a person reads off a row: kind, value, ratings, words, and how it is sold. */
function summary(offer: Offer): string {
  const { tolerance } = offer;
  const limits = !tolerance
    ? ""
    : tolerance.minus === tolerance.plus
      ? `${tolerance.plus}`
      : `${-tolerance.minus}+${tolerance.plus}`;
  const sections = offer.sections?.map((s) => `${s.farads}@${s.volts ?? ""}`).join(" ") ?? "";
  const volts = offer.volts === null ? "" : `${offer.volts}V${offer.voltsKind === "ac" ? "~" : ""}`;
  const words = [
    ...offer.technology,
    offer.safetyClass,
    offer.taper,
    offer.withSwitch && "switch",
    offer.newOldStock && "NOS",
  ];
  const said = words.filter((word) => word).join(" ");
  const sold = `${offer.pack > 1 ? `${offer.pack} for ` : ""}${offer.breaks.map(([n, price]) => `${n}:${price}`).join(" ")}`;
  const figures = [offer.value ?? sections, limits, offer.watts === null ? "" : `${offer.watts}W`, volts];
  return [offer.kind, ...figures, said, sold, offer.stock ?? "", offer.status].join("|");
}

describe("catalogues of several styles are read row by row", () => {
  test.each(EXPECTED)("%s row %d is %s: %s", async (list, row, reads) => {
    const { offers } = await listNamed(list);
    const offer = offers.find((candidate) => candidate.row === row);
    expect(offer && summary(offer)).toBe(reads);
  });

  test.each([
    ["german.csv", [28, 29], "an assortment and a note"],
    ["british.tsv", [], "every row is a part"],
    ["french.csv", [], "every row is a part"],
  ])("%s refuses %j: %s", async (list, rows) => {
    expect((await listNamed(list)).refused.map((refused) => refused.row)).toEqual(rows);
  });
});

test("a price per pack is a price, whatever else its head names", () => {
  const rows = ["A1,Cap film .1uF/630V polyester radial,10,$4.50", "A2,Res 47 ohm 2W metal oxide,5,$3.00"];
  const list = ["SKU,Item,Qty per pack,Price per pack (USD)", ...rows].join("\n");
  const { offers } = readOffers(readText(list, "x.csv").lines, { vendor: "Corwen" });
  // 4.50 for ten is 0.45 for one
  expect(offers[0]).toMatchObject({ pack: 10, value: 1e-7, volts: 630, breaks: [[1, 4.5]] });
});

test("a number printed twice gives two offers that can be told apart", () => {
  const { lines } = readText("No,Text,Price\nA1,Resistor 470 ohm 1W,0.10\nA1,Resistor 1K 1W,0.10", "x.csv");
  const { offers } = readOffers(lines, { vendor: "v" });
  expect(offers.map((offer) => [offer.id, offer.stockNumber])).toEqual([
    ["v:A1", "A1"],
    ["v:A1 row 3", "A1"],
  ]);
});

describe("laws", () => {
  const cell = fc.constantFrom(
    "R1",
    "470K 1/2W",
    "",
    "-",
    "0,35",
    "#N/A",
    "x",
    "10/$1",
    "1 µF 630V",
    "½",
    "Y2",
    '"',
    "\u0000",
  );
  const table = fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 12 });

  test("rows in are offers, refused rows and the lines down to the heads", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const { lines } = readText(rows.map((row) => row.join("\t")).join("\n"), "x.tsv");
        const { offers, refused, heads } = readOffers(lines);
        const told = [...offers.map((o) => o.row), ...refused.map((r) => r.row), ...heads].sort((a, b) => a - b);
        const rowsWithText = lines.filter((line) => line.text !== "" || heads.includes(line.number));
        expect(told).toEqual(rowsWithText.map((line) => line.number));
      }),
    );
  });

  test("no text makes it throw or hang", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "binary", maxLength: 60 }), { maxLength: 6 }), (cells) => {
        readOffers([{ number: 1, text: cells.join(","), cells }]);
      }),
    );
    const long = "1/2W 470K -20/+80% X1/Y2 ".repeat(4000);
    expect(readOffers([{ number: 1, text: long, cells: [long] }]).offers.length).toBeLessThanOrEqual(1);
  });
});
