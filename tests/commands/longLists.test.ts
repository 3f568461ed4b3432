import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { columnsOf, findOffersStep, likelyVendor, takenListStep } from "../../src/commands/longLists.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { standsInTheWay } from "../../src/commands/standsInTheWay.js";
import { doStep } from "../../src/commands/step.js";
import type { LongList } from "../../src/core/index.js";
import type { KeptList } from "../../src/longLists/port.js";
import { serveLists } from "../../src/longLists/serve.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

const HEADS = "Order No,Description,Stock,Price\n";

/** A long list in which only a few rows are what the parts want. */
const longList = (film: string) =>
  new TextEncoder().encode(
    HEADS +
      `L-1,${film}` +
      Array.from({ length: 5200 }, (_, i) => `\nF-${i},RES ${(i % 9) + 1}.3 OHM 5% 1W METAL FILM AXIAL,50,0.10`).join(
        "",
      ),
  );

function lists() {
  const kept = new Map<string, { card: KeptList; list: LongList }>();
  return serveLists(
    {
      cards: async () => [...kept.values()].map(({ card }) => card),
      load: async (vendor) => kept.get(vendor)?.list ?? null,
      keep: async (card, list) => void kept.set(card.vendor, { card, list }),
      forget: async (vendor) => void kept.delete(vendor),
    },
    () => performance.now(),
  );
}

async function withLongList(near: Readonly<Record<string, string>> = { Near: `N1,${FILM},0.50` }) {
  const { host } = await bench(near);
  const long = lists();
  const bringIn = async (film: string, date: string) => {
    const bytes = longList(film);
    await long.open({ name: "far.csv", arrayBuffer: async () => bytes.buffer });
    const taken = await long.take("Far", date, null);
    await doStep(host, await takenListStep(await openBook(host), long, taken));
  };
  const find = async () => {
    const book = await openBook(host);
    await doStep(host, await findOffersStep(host, book, wantsOf(book), long));
  };
  const offersOfFar = async () => valuesOf((await openBook(host)).offers).filter(({ vendor }) => vendor === "Far");
  return { host, bringIn, find, offersOfFar };
}

describe("a long list and the sheet", () => {
  test("Vendors tells the whole list, Offers holds only what comes into play", async () => {
    const { host, bringIn, find, offersOfFar } = await withLongList();
    await bringIn(`${FILM},9,0.20`, "2026-11-25");
    const vendor = valuesOf((await openBook(host)).vendors).find((row) => row.vendor === "Far");
    expect(vendor).toMatchObject({ offers: 5201, refused: 0, listDate: "2026-11-25" });
    expect(await offersOfFar()).toEqual([]);
    await find();
    const inPlay = await offersOfFar();
    expect(inPlay.length).toBeLessThan(60);
    expect(inPlay).toContainEqual(expect.objectContaining({ stockNumber: "L-1", change: null, prices: "0.2" }));
    const parts = valuesOf((await openBook(host)).parts);
    expect(parts.map(({ offer }) => offer)).toContain("Far L-1");
  });

  test("a later list says at the offers in play what became of them", async () => {
    const { bringIn, find, offersOfFar } = await withLongList();
    await bringIn(`${FILM},9,0.20`, "2026-11-25");
    await find();
    await bringIn(`${FILM},9,0.30`, "2026-12-02");
    const dearer = (await offersOfFar()).find(({ stockNumber }) => stockNumber === "L-1");
    expect(dearer).toMatchObject({ prices: "0.3", change: "dearer: was 0.2" });
    await bringIn(`brass screws M3,9,0.30`, "2026-12-09");
    const other = (await offersOfFar()).find(({ stockNumber }) => stockNumber === "L-1");
    expect(other).toMatchObject({ kind: "other" });
  });

  test("where nothing fits, the nearest misses of the long list are what the pane speaks of", async () => {
    const { host, bringIn, find } = await withLongList({});
    await bringIn(`${FILM.replace("630V", "250V")},9,0.20`, "2026-11-25");
    await find();
    const open = standsInTheWay(wantsOf(await openBook(host)));
    expect(open.map(({ why }) => why)).toEqual([
      expect.stringMatching(/^With 250 V instead of \d+ V, one would fit\.$/),
    ]);
  });
});

test.each([
  // file, columns, whose list it is, why
  ["Far_2026-12.csv", ["A", "B"], "Far", "its name speaks of a vendor that is known"],
  [
    "export.csv",
    ["Order No", "Description", "Stock", "Price", "New"],
    "Far",
    "only this vendor's lists have these columns",
  ],
  ["Tolvane-parts 2026-11-25.csv", ["Nr", "What"], "Tolvane parts", "a new vendor: its name without the date"],
])("%s with columns %j is a list of %s: %s", async (file, columns, vendor, _why) => {
  const { host, bringIn } = await withLongList();
  await bringIn(`${FILM},9,0.20`, "2026-11-25");
  const book = await openBook(host);
  expect(likelyVendor(book, file, columns)).toBe(vendor);
  expect(columnsOf(book, "Far")).toBe("Order No: stock number; Description: description; Stock: stock; Price: price");
});
