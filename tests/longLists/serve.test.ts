import { describe, expect, test } from "vitest";
import type { LongList } from "../../src/core/index.js";
import { matchOffers, readOffers } from "../../src/core/index.js";
import type { KeptList, ListFile } from "../../src/longLists/port.js";
import { type ListStore, MOST_IN_SHEET, serveLists } from "../../src/longLists/serve.js";
import { readText } from "../../src/sources/text.js";
import { ratingsOf } from "../core/match/makers.js";

const HEADS = "Order No,Description,Stock,Price 1,Status";
const VALUES = ["100", "220", "470", "1.5K", "22K", "100K", "470K", "1M"];

type RowOf = (i: number) => string;
const row: RowOf = (i) =>
  `A-${i},"RES ${VALUES[i % 8]} OHM ${(i % 2) * 4 + 1}% ${(i % 3) + 1}W METAL FILM, AXIAL",${i % 5 === 0 ? 0 : i},${((i % 90) / 100 + 0.05).toFixed(2)},Active`;

/** An invented list of so many rows, two in a thousand of them damaged. */
const listOf = (rows: number, of: RowOf = row): string =>
  [HEADS, ...Array.from({ length: rows }, (_, i) => (i % 500 === 7 ? `A-${i},RES ?? OHM,1,,` : of(i)))].join("\n");

const fileOf = (text: string, name = "list.csv"): ListFile => ({
  name,
  arrayBuffer: async () => new TextEncoder().encode(text).buffer as ArrayBuffer,
});

function memory(): ListStore {
  const lists = new Map<string, { card: KeptList; list: LongList }>();
  return {
    cards: async () => [...lists.values()].map(({ card }) => card),
    load: async (vendor) => lists.get(vendor)?.list ?? null,
    keep: async (card, list) => void lists.set(card.vendor, { card, list: structuredClone(list) }),
    forget: async (vendor) => void lists.delete(vendor),
  };
}

const LONG = 6000;
const serve = (store = memory()) => serveLists(store, () => performance.now());

describe("a list too long for the sheet", () => {
  test("loses no row: each is an offer or a refused row with its reason", async () => {
    const lists = serve();
    expect(await lists.open(fileOf(listOf(LONG)))).toEqual({ rows: LONG + 1 });
    const { kept, reasons } = await lists.take("Brellin", "2026-11-25", null);
    expect(kept).toMatchObject({ rows: LONG + 1, offers: LONG - 12, refused: 12 });
    expect(reasons.reduce((sum, [, rows]) => sum + rows, 0)).toBe(12);
    expect(await lists.refused("Brellin", 0, 2)).toEqual([
      { row: 9, text: "A-7, RES ?? OHM, 1, , ", reason: "it cannot be read" },
      { row: 509, text: "A-507, RES ?? OHM, 1, , ", reason: "it cannot be read" },
    ]);
    expect(await lists.kept()).toEqual([kept]);
  });

  test("brings into play what a scan of the whole list finds best, also after it was put away and loaded again", async () => {
    const store = memory();
    const lists = serve(store);
    await lists.open(fileOf(listOf(LONG)));
    await lists.take("Brellin", "2026-11-25", null);
    const { offers } = readOffers(readText(listOf(LONG), "list.csv").lines, { vendor: "Brellin" });
    const ratings = ratingsOf({ wanted: 470_000, window: { min: 423_000, max: 517_000 } });
    const best = matchOffers(ratings, offers).matches.slice(0, 4);
    expect(best).toHaveLength(4);
    for (const served of [lists, serve(store)]) {
      const { inPlay, known } = await served.find("Brellin", [{ ratings, pieces: 1 }], 4, [
        { stockNumber: "A-15", description: "" },
        { stockNumber: "gone", description: "" },
      ]);
      expect(inPlay).toEqual(best.map(({ offer }) => offer));
      expect(known.map(({ stockNumber }) => stockNumber)).toEqual(["A-15"]);
    }
  });

  test("where nothing fits, what one eased limit would let in comes into play, so that the pane can say it", async () => {
    const lists = serve();
    await lists.open(fileOf(listOf(LONG)));
    await lists.take("Brellin", "2026-11-25", null);
    const ratings = ratingsOf({ wanted: 470_000, leastWatts: 20, wantWatts: 20 });
    const { inPlay } = await lists.find("Brellin", [{ ratings, pieces: 1 }], 4, []);
    expect(inPlay.length).toBeGreaterThan(0);
    expect(matchOffers(ratings, inPlay).matches).toEqual([]);
  });

  test("a later list of the same vendor says what is new, gone, dearer, out of stock and no longer made", async () => {
    const lists = serve();
    await lists.open(fileOf(listOf(LONG)));
    expect((await lists.take("Brellin", "2026-11-25", null)).changes).toBeNull();
    const later: RowOf = (i) => {
      if (i === 1) return row(i).replace(",0.06,", ",0.99,");
      if (i === 2) return row(i).replace(/,2,/, ",0,");
      if (i === 3) return row(i).replace("Active", "Obsolete");
      return i === 4 ? row(i).replace("A-4,", "B-4,") : row(i);
    };
    await lists.open(fileOf(listOf(LONG, later)));
    const { changes } = await lists.take("Brellin", "2026-12-02", null);
    expect(changes?.map(({ change, count, examples }) => [change, count, examples[0]?.stockNumber])).toEqual([
      ["new", 1, "B-4"],
      ["gone from the list", 1, "A-4"],
      ["no longer made", 1, "A-3"],
      ["out of stock", 1, "A-2"],
      ["dearer", 1, "A-1"],
    ]);
  });

  test("is tried on a sample under the columns as corrected, and forgotten when the user says so", async () => {
    const lists = serve();
    await lists.open(fileOf(listOf(LONG)));
    const guessed = await lists.tryOut("Brellin", null);
    expect(guessed).toMatchObject({
      rows: LONG + 1,
      isWhole: false,
      understood: expect.stringContaining("Price 1: price"),
    });
    expect(guessed.tried).toBeLessThan(500);
    const corrected = await lists.tryOut("Brellin", "Order No: stock number; Description: description");
    expect(corrected.offers.every(({ breaks }) => breaks.length === 0)).toBe(true);
    await lists.take("Brellin", "2026-11-25", null);
    await lists.forget("Brellin");
    expect(await lists.kept()).toEqual([]);
    await expect(lists.find("Brellin", [], 1, [])).rejects.toThrow("keeps no list of Brellin");
  });

  test("can be stopped while it is read, and nothing of it is kept", async () => {
    const lists = serve();
    const stop = new AbortController();
    const told: string[] = [];
    await lists.open(fileOf(listOf(60_000)));
    const onProgress = (_: number, doing: string) => {
      told.push(doing);
      stop.abort();
    };
    await expect(lists.take("Brellin", "x", null, { onProgress, signal: stop.signal })).rejects.toThrow(/abort/i);
    expect(told).toEqual(["reading the offers"]);
    expect(await lists.kept()).toEqual([]);
  });
});

test("a list short enough for the sheet is read whole when it is tried", async () => {
  const lists = serve();
  await lists.open(fileOf(listOf(20)));
  const { isWhole, offers, refused, columns } = await lists.tryOut("Brellin", null);
  expect([isWhole, offers.length, refused.length, MOST_IN_SHEET]).toEqual([true, 19, 1, 5000]);
  expect(columns[1]).toEqual({
    index: 1,
    name: "Description",
    field: "description",
    examples: [0, 1, 2].map((i) => /"(.*)"/.exec(row(i))![1]),
  });
});
