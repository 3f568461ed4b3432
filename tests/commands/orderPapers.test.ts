import { beforeAll, describe, expect, test } from "vitest";
import { openBook } from "../../src/commands/book.js";
import { deliveryStep } from "../../src/commands/deliveries.js";
import { orderPapersStep } from "../../src/commands/orderPapers.js";
import { doStep } from "../../src/commands/step.js";
import { addRows } from "../../src/commands/writeSheet.js";
import { ORDER_SHEET } from "../../src/core/index.js";
import { embeddedWorkbook } from "../../src/hosts/embedded.js";
import type { Host } from "../../src/hosts/host.js";
import { Model } from "../../src/hosts/library.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM, order } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

const write = async (host: Host) => doStep(host, await orderPapersStep(host, await openBook(host)));

/** What a sheet shows, without empty cells at the end of its rows and empty rows at its end. */
async function shown(host: Host, sheet: string): Promise<string[]> {
  const cells = await host.read(sheet);
  const rows = (cells?.rows ?? []).map((row) => row.map(({ value }) => String(value ?? "")).join("|"));
  return rows.map((row) => row.replace(/\|+$/, "")).filter((row) => row !== "");
}

const line = (vendor: string, stockNumber: string, units: number) => ({
  ...{ vendor, stockNumber, description: `part ${stockNumber}`, units, pack: 5, price: 0.9, cost: 0.9 * units },
  ...{ currency: "EUR", forWhom: "HL-3 ×4", state: "to order" },
});

async function ordered(...lines: readonly ReturnType<typeof line>[]) {
  const { host, model } = embeddedWorkbook(new Model());
  await host.write(addRows(null, ORDER_SHEET, lines), "an order");
  return { host, model };
}

describe("the papers of an order as sheets", () => {
  test("one for each vendor with its numbers and a live sum, who gets what, and the spares", async () => {
    const { host } = await ordered(line("Lenne", "L1", 2), line("Wick", "W1", 1), line("Lenne", "L2", 1));
    await write(host);
    expect(await shown(host, "Order Lenne")).toEqual([
      "stock number|description|units|pack|pieces|price|cost|currency",
      "L1|part L1|2|5|10|0.9|1.8|EUR",
      "L2|part L2|1|5|5|0.9|0.9|EUR",
      "|||||goods|2.7|EUR",
    ]);
    expect(await shown(host, "Who gets what")).toContain("|||HL-3|4|Wick|W1|part W1|to order");
    expect(await shown(host, "Spares to stock")).toContain("L1|part L1|Lenne|6");
  });

  test("written again there is one of each, and rows that are gone are gone", async () => {
    const { host } = await ordered(line("Lenne", "L1", 2), line("Lenne", "L2", 1), line("Wick", "W1", 1));
    await write(host);
    const before = await host.sheets();
    await doStep(host, deliveryStep(await openBook(host), 2, { state: "on the way" }));
    await write(host);
    expect(await host.sheets()).toEqual(before);
    expect(await shown(host, "Order Lenne")).toEqual([
      "stock number|description|units|pack|pieces|price|cost|currency",
      "L1|part L1|2|5|10|0.9|1.8|EUR",
      "|||||goods|1.8|EUR",
    ]);
  });

  test("the sheet of an order that went out stays as it was sent; that of a vendor dropped is emptied", async () => {
    const { host } = await ordered(line("Lenne", "L1", 2), line("Wick", "W1", 1));
    await write(host);
    await doStep(host, deliveryStep(await openBook(host), 1, { state: "on the way" }));
    await host.write([{ kind: "cells", sheet: "Order", row: 2, column: 0, cells: [["Marsh"]] }], "another vendor");
    await write(host);
    expect(await shown(host, "Order Lenne")).toHaveLength(3);
    expect(await shown(host, "Order Wick")).toHaveLength(1);
    expect(await shown(host, "Order Marsh")).toHaveLength(3);
  });

  test("names that no workbook takes, and a sheet of the user's own with such a name, do no harm", async () => {
    const { host } = await ordered(line("A/B [north] & a very long name of a house", "1", 1), line("Mine", "2", 1));
    await host.write([{ kind: "cells", sheet: "Order Mine", row: 0, column: 0, cells: [["my notes"]] }], "typed");
    await write(host);
    const names = await host.sheets();
    expect(names).toContain("Order A-B -north- & a very long");
    expect(names).toContain("Order Mine 2");
    expect(await shown(host, "Order Mine")).toEqual(["my notes"]);
    await write(host);
    expect(await host.sheets()).toEqual(names);
  });

  test("one undo takes all of them back", async () => {
    const { host } = await bench({ Near: `N1,${FILM},0.60\n` });
    await order(host);
    const step = await orderPapersStep(host, await openBook(host));
    expect(step.name).toBe("Write the order sheets of 1 vendor, who gets what, and the spares");
  });
});
