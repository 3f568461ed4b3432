import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { bringInOffersStep } from "../../src/commands/bringInOffers.js";
import { matchStep, staleMatches } from "../../src/commands/match.js";
import { bookBasket, isPlan, orderStateStep, orderStep } from "../../src/commands/order.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { readVendorList } from "../../src/commands/readVendorList.js";
import { doStep } from "../../src/commands/step.js";
import { addRows } from "../../src/commands/writeSheet.js";
import { ON_HAND_SHEET } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import { Model } from "../../src/hosts/library.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { readSource } from "../../src/sources/readSource.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { LIST, TARGET } from "./aList.js";

beforeAll(async () => {
  await registerFromSources();
});

const HEADS = "Stock number,Description,Price\n";
const FILM = "polyester film capacitor 0.047 µF 630V 10% axial";

async function bench(lists: Readonly<Record<string, string>>) {
  const { host } = embeddedWorkbook(new Model());
  await doStep(host, bringInListStep(await openBook(host), LIST, TARGET));
  const bringIn = async (vendor: string, rows: string) => {
    const book = await openBook(host);
    const bytes = new TextEncoder().encode(HEADS + rows);
    const list = await readVendorList(readSource, book, { vendor, file: "list.csv", bytes, listDate: "2026-11-25" });
    const step = bringInOffersStep(book, { ...list, terms: { shipping: 5 } });
    await doStep(host, step);
    return step;
  };
  for (const [vendor, rows] of Object.entries(lists)) await bringIn(vendor, rows);
  return { host, bringIn };
}

async function order(host: Awaited<ReturnType<typeof bench>>["host"]) {
  const book = await openBook(host);
  const wants = wantsOf(book);
  const basket = bookBasket(book, wants);
  const plan = await bestPlan(basket, { seconds: 5 });
  if (isPlan(plan)) await doStep(host, orderStep(book, wants, basket, plan));
  return valuesOf((await openBook(host)).order);
}

describe("offers and orders", () => {
  test("the best offer stands at its part, and a change of its price is noticed", async () => {
    const { host, bringIn } = await bench({ Near: `N1,${FILM},0.60\n` });
    await doStep(host, matchStep(await openBook(host)));
    const matched = await openBook(host);
    expect(valuesOf(matched.parts)[2]).toMatchObject({ offer: "Near N1", quantity: 1 });
    expect(staleMatches(matched, wantsOf(matched))).toEqual([]);
    const again = await bringIn("Near", `N1,${FILM},0.80\nN2,${FILM},0.90\n`);
    expect(again.notes).toEqual(["1 new, 1 changed, 0 gone."]);
    const dearer = await openBook(host);
    expect(valuesOf(dearer.offers)[0]!.change).toBe("dearer: was 0.6");
    expect(staleMatches(dearer, wantsOf(dearer))).toHaveLength(1);
  });

  test("an offer that the user picked stays, though another is cheaper", async () => {
    const { host } = await bench({ Near: `N1,${FILM},0.60\nN2,${FILM},0.90\n` });
    const { parts } = await openBook(host);
    const column = parts!.places.offer!;
    await host.write([{ kind: "cells", sheet: "Parts", row: 3, column, cells: [["Near N2"]] }], "typed");
    expect((await order(host)).map(({ stockNumber }) => stockNumber)).toEqual(["N2"]);
  });

  test("what is on hand is taken before anything is bought", async () => {
    const { host } = await bench({ Near: `N1,${FILM},0.60\n` });
    const own = {
      description: "film capacitor from the drawer",
      kind: "capacitor",
      value: "0.047 µF",
      tolerance: "±10 %",
      volts: 630,
      technology: "polyester film axial",
      stock: 3,
    };
    await host.write(addRows((await openBook(host)).onHand, ON_HAND_SHEET, [own]), "drawer");
    const rows = await order(host);
    expect(rows.map(({ vendor, cost }) => [vendor, cost])).toEqual([["On hand", 0]]);
  });

  test("what came is noted at its part, and is not bought again", async () => {
    const { host } = await bench({ Near: `N1,${FILM},0.60\n` });
    await order(host);
    await doStep(host, orderStateStep(await openBook(host), 1, "came"));
    const book = await openBook(host);
    expect(valuesOf(book.parts)[2]!.came).toBe(1);
    expect(wantsOf(book).demands).toEqual([]);
  });

  test("a set on hold is left out", async () => {
    const { host } = await bench({ Near: `N1,${FILM},0.60\n` });
    const { projects } = await openBook(host);
    const column = projects!.places.state!;
    await host.write([{ kind: "cells", sheet: "Projects", row: 1, column, cells: [["on hold"]] }], "typed");
    expect(wantsOf(await openBook(host)).demands).toEqual([]);
  });
});
