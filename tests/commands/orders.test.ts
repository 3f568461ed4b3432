import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { deliveryStep } from "../../src/commands/deliveries.js";
import { matchStep, staleMatches } from "../../src/commands/match.js";
import { wantsOf } from "../../src/commands/orderBook.js";
import { doStep } from "../../src/commands/step.js";
import { addRows } from "../../src/commands/writeSheet.js";
import { ON_HAND_SHEET } from "../../src/core/index.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM, order } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

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
    await doStep(host, deliveryStep(await openBook(host), 1, { state: "came" }));
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
