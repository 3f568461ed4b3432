import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { deliveryStep } from "../../src/commands/deliveries.js";
import { compositionsFor, compositionText, takeCompositionStep } from "../../src/commands/makeUp.js";
import { matchStep } from "../../src/commands/match.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { inTheWayOf, standsInTheWay } from "../../src/commands/standsInTheWay.js";
import { doStep } from "../../src/commands/step.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, order, typeInto } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

/** R1 of Sound wants 470 k; the shop has halves of it, and a value too far away. */
const HALVES = `H1,metal film resistor 220K 1W 5% 350V axial,0.20
H2,metal film resistor 250K 1W 5% 350V axial,0.25
H3,metal film resistor 2M2 1W 5% 350V axial,0.25
`;

/** The bench with that shop, and R1 of Sound to be replaced. */
async function shop() {
  const { host } = await bench({ Half: HALVES });
  await typeInto(host, "parts", 2, "action", "replace");
  return host;
}

async function withHalves() {
  const host = await shop();
  const book = await openBook(host);
  return { host, book, wants: wantsOf(book), row: book.parts!.rows[1]! };
}

describe("where no offer fits", () => {
  test("the limit that stands in the way is named, for the list and for the part in the hand", async () => {
    const { wants } = await withHalves();
    const open = standsInTheWay(wants);
    expect(open.find(({ ids }) => ids.includes("HL-2"))?.why).toMatch(/instead of 470 k/);
    expect(inTheWayOf("HL-2", wants)).toEqual(open.find(({ ids }) => ids.includes("HL-2")));
    expect(inTheWayOf("nobody", wants)).toBeNull();
  });

  test("the value is made up from offers, taken as text that reads back, and each piece is bought", async () => {
    const { host, book, wants, row } = await withHalves();
    const [best] = compositionsFor(book, row, wants);
    // 250 k + 220 k is 470 k
    expect(best!.text).toBe("250 k + 220 k");
    expect(compositionText(best!)).toBe("1 of Half H2 and 1 of Half H1, exactly the value; needs room for 2 bodies");
    await doStep(host, takeCompositionStep(book, row, best!));
    const taken = await openBook(host);
    expect(valuesOf(taken.parts)[1]).toMatchObject({
      newValue: "250 k + 220 k",
      newSize: 470_000,
      offer: "Half H2 + Half H1",
      quantity: 2,
    });
    expect(inTheWayOf("HL-2", wantsOf(taken))).toBeNull();
    const rows = await order(host);
    expect(rows.map(({ stockNumber, forWhom }) => [stockNumber, forWhom])).toEqual([
      ["H2", "HL-2"],
      ["H1", "HL-2"],
    ]);
  });

  test("finding offers anew leaves what was taken, and one piece that came leaves the other on the list", async () => {
    const { host, book, wants, row } = await withHalves();
    await doStep(host, takeCompositionStep(book, row, compositionsFor(book, row, wants)[0]!));
    await doStep(host, matchStep(await openBook(host)));
    expect(valuesOf((await openBook(host)).parts)[1]!.offer).toBe("Half H2 + Half H1");
    await order(host);
    await doStep(host, deliveryStep(await openBook(host), 1, { state: "came" }));
    const demands = wantsOf(await openBook(host)).demands.filter(({ part }) => part === "HL-2");
    expect(demands.map(({ pick, pieces }) => [pick, pieces])).toEqual([["Half H1", 1]]);
  });

  test("capacitors in series say that their d.c. volts have to be kept even", async () => {
    const { host } = await bench({ Half: "K1,polyester film capacitor 0.1 µF 400V 5% axial,0.40\n" });
    const book = await openBook(host);
    // two of 0.1 µF in series are 0.05 µF, and bear 2 x 400 V where C1 wants 630 V for its 0.05 mf
    const [best] = compositionsFor(book, book.parts!.rows[2]!, wantsOf(book));
    expect(best?.text).toBe("0.1 µF + 0.1 µF");
    expect(compositionText(best!)).toContain("a resistor across each keeps them even");
  });

  test("two equal halves are one line of the order with two pieces for the part", async () => {
    const host = await shop();
    await typeInto(host, "parts", 2, "newValue", "250 k + 250 k");
    const rows = await order(host);
    expect(rows.map(({ stockNumber, units, forWhom }) => [stockNumber, units, forWhom])).toEqual([
      ["H2", 2, "HL-2 ×2"],
    ]);
  });

  test("a text that is no network is said, not bought", async () => {
    const host = await shop();
    await typeInto(host, "parts", 2, "newValue", "250 k + oops");
    const { notAsked } = wantsOf(await openBook(host));
    expect(notAsked.map(({ row }) => row.id)).toEqual(["HL-2"]);
  });
});
