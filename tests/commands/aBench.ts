import { openBook, valuesOf } from "../../src/commands/book.js";
import { bringInListStep } from "../../src/commands/bringInList.js";
import { bringInOffersStep } from "../../src/commands/bringInOffers.js";
import { bookBasket, isPlan, orderStep } from "../../src/commands/order.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { readVendorList } from "../../src/commands/readVendorList.js";
import { doStep } from "../../src/commands/step.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { Host } from "../../src/hosts/host.js";
import { Model } from "../../src/hosts/library.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { readSource } from "../../src/sources/readSource.js";
import { LIST, TARGET } from "./aList.js";

const HEADS = "Stock number,Description,Price\n";
export const FILM = "polyester film capacitor 0.047 µF 630V 10% axial";

export async function bench(lists: Readonly<Record<string, string>>) {
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

export async function order(host: Host) {
  const book = await openBook(host);
  const wants = wantsOf(book);
  const basket = bookBasket(book, wants);
  const plan = await bestPlan(basket, { seconds: 5 });
  if (isPlan(plan)) await doStep(host, orderStep(book, wants, basket, plan));
  return valuesOf((await openBook(host)).order);
}

/** Types something into one cell of a sheet, by the key of its column; the row counts from 0, heads included. */
export async function typeInto(
  host: Host,
  sheet: "parts" | "order" | "vendors" | "projects",
  row: number,
  key: string,
  text: string | number,
): Promise<void> {
  const view = (await openBook(host))[sheet]!;
  const column = (view.places as Record<string, number>)[key]!;
  await host.write([{ kind: "cells", sheet: view.name, row, column, cells: [[text]] }], "typed");
}
