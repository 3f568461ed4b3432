import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { type Delivery, deliveryStep, stockSparesStep } from "../../src/commands/deliveries.js";
import { newPartVerdict, newReadingStep } from "../../src/commands/newReading.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { overviewOf } from "../../src/commands/overview.js";
import { doesSomething, doStep } from "../../src/commands/step.js";
import type { Host } from "../../src/hosts/host.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM, order, typeInto } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

const PACK = `${FILM}, pack of 4`;

/** C1 is in the set five times; its pack holds four, so two packs and three spares are bought. */
async function fiveOrdered() {
  const { host } = await bench({ Near: `N1,"${PACK}",2.40\n` });
  await typeInto(host, "parts", 3, "perSet", 5);
  await order(host);
  return host;
}

const deliver = async (host: Host, what: Delivery) => doStep(host, deliveryStep(await openBook(host), 1, what));
const cameOfC1 = async (host: Host) => valuesOf((await openBook(host)).parts)[2]!.came;
const wanted = async (host: Host) => wantsOf(await openBook(host)).demands.map(({ part, pieces }) => [part, pieces]);

describe("after the order", () => {
  test("five for one part in packs of four: the count stands behind the part, three are spares", async () => {
    const host = await fiveOrdered();
    const [line] = valuesOf((await openBook(host)).order);
    expect(line).toMatchObject({ units: 2, pack: 4, wanted: 5, spares: 3, forWhom: "HL-3 ×5" });
  });

  test.each([
    // state, came, at the part, still wanted, why
    ["on the way", null, null, [], "what is on the way counts as had"],
    ["on the way", 3, 3, [], "three are here, the rest still comes"],
    ["short", 3, 3, [["HL-3", 2]], "two of five do not come and are wanted again"],
    ["short", 0, null, [["HL-3", 5]], "nothing came"],
    ["came", null, 5, [], "all came, spares too"],
    ["sent another", 4, 4, [["HL-3", 1]], "four others came in its place"],
    ["to order", null, null, [["HL-3", 5]], "not ordered yet"],
  ] as const)("%s, %s here: the part has %s and wants %j, for %s", async (state, came, atPart, wants, _why) => {
    const host = await fiveOrdered();
    await deliver(host, { state, came });
    expect(await cameOfC1(host)).toBe(atPart);
    expect(await wanted(host)).toEqual(wants);
  });

  test("a part delivery is not yet to be fitted; with the rest it is", async () => {
    const host = await fiveOrdered();
    await deliver(host, { state: "on the way", came: 3 });
    expect(overviewOf(await openBook(host)).toFit).toBe(0);
    await deliver(host, { state: "came" });
    expect(overviewOf(await openBook(host)).toFit).toBe(1);
  });

  test("what is short is ordered again, beside the line that was short", async () => {
    const host = await fiveOrdered();
    await deliver(host, { state: "short", came: 3 });
    const rows = await order(host);
    expect(rows.map(({ state, wanted: pieces, units }) => [state, pieces, units])).toEqual([
      ["short", 5, 2],
      ["to order", 2, 1],
    ]);
    expect(valuesOf((await openBook(host)).parts)[2]!.quantity).toBe(5);
  });

  test("spares that came go to the drawers once, and are taken from there before anything is bought", async () => {
    const host = await fiveOrdered();
    await deliver(host, { state: "came" });
    await doStep(host, stockSparesStep(await openBook(host)));
    const book = await openBook(host);
    expect(valuesOf(book.onHand)).toMatchObject([{ stockNumber: "N1", stock: 3, pack: 1, kind: "capacitor" }]);
    expect(doesSomething(stockSparesStep(book))).toBe(false);
    await typeInto(host, "parts", 3, "perSet", 7);
    const rows = await order(host);
    expect(rows.at(-1)).toMatchObject({ vendor: "On hand", units: 2, cost: 0 });
    await doStep(host, deliveryStep(await openBook(host), 2, { state: "came" }));
    const after = await openBook(host);
    expect(valuesOf(after.onHand)[0]!.stock).toBe(1);
    expect(valuesOf(after.parts)[2]!.came).toBe(7);
  });

  test("a new part is measured against its own tolerance, and the old part's reading stays", async () => {
    const host = await fiveOrdered();
    await deliver(host, { state: "came" });
    const book = await openBook(host);
    const row = book.parts!.rows[2]!;
    // 0.047 µF ±10 % reaches 0.0517; 0.0495 is 5.3 % above
    expect(newPartVerdict(row.values, "0.0495")).toBe("+5.3 %, within ±10 %");
    expect(newPartVerdict(row.values, "0.052 µF")).toBe("+11 %, outside ±10 %");
    expect(newPartVerdict(row.values, "short")).toBe("short: do not fit it");
    await doStep(host, newReadingStep(book, row, "0.0495 µF", "2026-11-25 10:00"));
    const after = await openBook(host);
    expect(valuesOf(after.parts)[2]).toMatchObject({ fittedReading: "0.0495 µF", reading: null });
    expect(valuesOf(after.readings)).toMatchObject([{ id: "HL-3", remark: "new part, Near N1" }]);
    expect(doesSomething(newReadingStep(after, row, "abc", "now"))).toBe(false);
  });
});
