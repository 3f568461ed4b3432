import { readFileSync } from "node:fs";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Offer, readOffers } from "../../../../src/core/index.js";
import { readSource } from "../../../../src/sources/readSource.js";
import { readText } from "../../../../src/sources/text.js";

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

/** Worked out by hand from the fixtures, row by row. */
const EXPECTED: readonly (readonly [list: string, row: number, reads: string, why: string])[] = [
  [
    "german.csv",
    4,
    "resistor|4700|0.05|0.5W||carbon-film axial|1:0.08 10:0.06 100:0.04|1250|in-stock",
    "1.250 is a count there",
  ],
  [
    "german.csv",
    5,
    "resistor|1000000|0.05|0.5W||carbon-film axial|1:0.08 10:0.06 100:0.04|0|out-of-stock",
    "none are left",
  ],
  ["german.csv", 6, "resistor|220000|0.1|1W||composition NOS|1:0.9 10:0.75|12|in-stock", "alte Lagerware"],
  ["german.csv", 7, "resistor|10000|0.01|0.6W||metal-film|10 for 1:0.95 10:0.8|480|in-stock", "VE is the pack"],
  ["german.csv", 9, "resistor|2200|0.05|25W||wirewound chassis|1:3.9|8|last-time-buy", "to be screwed down"],
  [
    "german.csv",
    10,
    "resistor|10|0.05|1W||fusible flameproof|1:0.35 10:0.28|60|in-stock",
    "no fuse, though named after one",
  ],
  [
    "german.csv",
    11,
    "capacitor|4.7e-8|0.1||630V|film polypropylene axial|1:0.95 10:0.85 100:0.7|210|in-stock",
    "value and volts in one cell",
  ],
  ["german.csv", 13, "capacitor|1e-9|0.025||160V|film polystyrene|1:0.45|35|last-time-buy", "1.000 pF is a thousand"],
  ["german.csv", 15, "capacitor|0.00005@500 0.00005@500|||500V|electrolytic chassis|1:19.9|4|in-stock", "two sections"],
  ["german.csv", 17, "capacitor|4.7e-9|-0.2+0.8||1000V|ceramic disc|1:0.15 10:0.12|600|in-stock", "lopsided limits"],
  ["german.csv", 18, "capacitor|2.2e-7|||275V~|X2|1:0.55 10:0.48|130|in-stock", "V~ is a.c."],
  ["german.csv", 20, "potentiometer|1000000||||log switch|1:5.9|7|in-stock", "6 mm is its shaft"],
  [
    "german.csv",
    22,
    "inductor|10||||||1:21|2|in-stock".replace("||||||", "|||||"),
    "ohms of a choke are not its value",
  ],
  ["german.csv", 26, "fuse||||250V||10 for 1:1.5|55|in-stock", "10er Pack"],
  ["german.csv", 27, "other||||||1:2.2|25|in-stock", "ceramic says nothing of a socket"],
  ["british.tsv", 2, "resistor|100|0.05|0.5W||carbon-film|1:0.06 10:0.05||in-stock", "6p are pence"],
  ["british.tsv", 6, "resistor|0.47|0.05|7W||wirewound|1:0.55 10:0.45||out-of-stock", "R47, and a ceramic body"],
  ["british.tsv", 5, "resistor|1000000|0.1|1W||composition NOS|1:1.1|3|last-time-buy", "3 only left"],
  ["british.tsv", 13, "capacitor|0.000016@350 0.000016@350|||350V|electrolytic axial|1:8.8||out-of-stock", "2x16"],
  ["british.tsv", 18, "potentiometer|500000|0.2|||log switch|1:6.2||in-stock", "the switch's volts are its own"],
  ["british.tsv", 21, "fuse|||||" + "|10 for 1:2.2||in-stock", "20mm is its length"],
  [
    "units-in-a-column.csv",
    3,
    "resistor|470000|0.1|1W||composition NOS|1:0.95 25:0.8|120|in-stock",
    "0.47 and Mohm in two cells",
  ],
  [
    "units-in-a-column.csv",
    7,
    "capacitor|4.7e-10|0.05||500V|silver-mica|1:0.9 25:0.8|60|last-time-buy",
    "470 and pF in two cells",
  ],
  [
    "units-in-a-column.csv",
    9,
    "capacitor|4.7e-9|0.2||440V~|ceramic X1/Y2|1:0.4 25:0.35|90|in-stock",
    "a column of a.c. volts",
  ],
  ["units-in-a-column.csv", 14, "inductor|0.0025|0.1||||1:3.1|12|in-stock", "mH"],
  ["french.csv", 2, "capacitor|1e-7|||400V|paper oil NOS|1:1.2|14|in-stock", "ancien stock neuf"],
  [
    "french.csv",
    4,
    "capacitor|0.00005@350 0.00005@350|||350V|electrolytic chassis|1:16.5|3|last-time-buy",
    "volts of the column are the sections'",
  ],
  ["french.csv", 9, "resistor|2200000|0.05|0.5W||carbon-film|10 for 1:0.8|25|in-stock", "sachet de 10"],
  ["french.csv", 12, "lamp||||6.5V||1:0.7|22|in-stock", "lampe de cadran is no tube"],
  ["no-heads.csv", 3, "capacitor|5e-8|||400V|paper|1:0.25|18|in-stock", "columns told by their contents"],
  ["no-heads.csv", 6, "capacitor|0.00004@150 0.00002@150|||150V|electrolytic|1:2.25|11|in-stock", "40-20 are sections"],
  ["no-heads.csv", 9, "transformer||||||1:6.5|2|in-stock", "ohms and watts of a transformer have no field"],
];

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
