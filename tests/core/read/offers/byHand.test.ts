import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { type Offer, readOffers } from "../../../../src/core/index.js";
import { readSource } from "../../../../src/sources/readSource.js";

const FOLDER = path.resolve(import.meta.dirname, "fixtures/byHand");

/** What a person wrote down of a row before the reader saw it; a field left out is silent. Base units, breaks by the piece. */
type HandRow = {
  readonly row: number;
  readonly unreadable?: boolean;
  readonly technology?: readonly string[];
} & Readonly<Record<string, unknown>>;

const catalogues = readdirSync(FOLDER).filter((file) => !file.endsWith(".json"));
const handRows = (file: string) =>
  JSON.parse(readFileSync(path.join(FOLDER, file.replace(/\.\w+$/, ".json")), "utf8")) as readonly HandRow[];

const round = (value: unknown): unknown => (typeof value === "number" ? Number(value.toPrecision(9)) : value);

/** An offer in the words and units of a hand reading. */
function asRead(offer: Offer): Readonly<Record<string, unknown>> {
  const { pack, breaks, tolerance, voltsKind, sections } = offer;
  return {
    ...offer,
    toleranceMinus: round(tolerance?.minus ?? null),
    tolerancePlus: round(tolerance?.plus ?? null),
    voltsKind: voltsKind === "ac" ? "ac" : null,
    breaks: breaks.map(([from, price]) => [from * pack, round(price / pack)]),
    sections: sections?.map(({ farads, volts }) => ({ farads, volts })) ?? null,
  };
}

describe.each(catalogues)("the catalogue %s is read as a person reads it", (file) => {
  const hand = handRows(file);
  const read = async () => readOffers((await readSource(file, readFileSync(path.join(FOLDER, file)))).lines);

  test.each(hand.filter(({ unreadable }) => !unreadable))(
    "row $row, $kind $value",
    async ({ row, technology, ...said }) => {
      const offer = (await read()).offers.find((one) => one.row === row);
      const found = offer ? asRead(offer) : {};
      const wanted = Object.fromEntries(Object.entries(said).map(([field, value]) => [field, round(value)]));
      expect({
        ...found,
        ...Object.fromEntries(Object.keys(said).map((field) => [field, round(found[field])])),
      }).toMatchObject(wanted);
      expect(offer!.technology).toEqual(expect.arrayContaining([...(technology ?? [])]));
    },
  );

  test("what is no offer is refused, and no row is lost", async () => {
    const { offers, refused } = await read();
    expect(refused.map(({ row }) => row)).toEqual(hand.filter(({ unreadable }) => unreadable).map(({ row }) => row));
    expect(offers.length + refused.length).toBe(hand.length);
  });
});
