import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Basket, differencesOf, firstPlans, withoutOffers, withoutVendor } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";
import { BASKET_RULES, randomBasket } from "./randomBasket.js";

const basket = basketOf(
  [vendorOf("A"), vendorOf("B"), vendorOf("C")],
  [offerOf("A-1", 0.5), offerOf("A-2", 0.6), offerOf("B-1", 0.6), offerOf("B-2", 0.1), offerOf("C-1", 0.1)],
  [lineOf("R1", 3, ["A-1", "B-1"]), lineOf("R2", 2, ["A-2", "B-2", "C-1"])],
);
const planOf = (problem: Basket) => ({ basket: problem, plan: [...firstPlans(problem)].at(-1)! });
const cents = (money: number) => Math.round(money * 100) / 100;

describe("what if", () => {
  test("a vendor dropped: the lines that change, what they had and have, and what that costs", () => {
    const found = differencesOf(planOf(basket), planOf(withoutVendor(basket, "B")));
    // before: 3 x 0.60 + 2 x 0.10 + 4.00 from B; after: 3 x 0.50 + 2 x 0.60 + 4.00 from A
    expect(cents(found.more)).toBe(0.7);
    expect(found.lines.map((one) => ({ ...one, more: cents(one.more) }))).toEqual([
      { line: "R1", before: [{ offer: "B-1", pieces: 3 }], after: [{ offer: "A-1", pieces: 3 }], more: -0.3 },
      { line: "R2", before: [{ offer: "B-2", pieces: 2 }], after: [{ offer: "A-2", pieces: 2 }], more: 1 },
    ]);
    expect(found.bills).toEqual([
      { vendor: "A", more: 4 },
      { vendor: "B", more: -4 },
    ]);
  });

  test("an offer gone that nobody used changes nothing", () => {
    const found = differencesOf(planOf(basket), planOf(withoutOffers(basket, ["C-1"])));
    expect(found).toEqual({ more: 0, lines: [], bills: [] });
  });

  test("more pieces of a line: it pays more, though the offer is the same", () => {
    const more = { ...basket, lines: [lineOf("R1", 4, ["A-1", "B-1"]), basket.lines[1]!] };
    const [line] = differencesOf(planOf(basket), planOf(more)).lines;
    expect(line).toMatchObject({ line: "R1", after: [{ offer: "B-1", pieces: 4 }] });
    expect(cents(line!.more)).toBe(0.6);
  });

  test("lines and bills add up to what the plan costs more", () => {
    fc.assert(
      fc.property(randomBasket(BASKET_RULES), randomBasket(BASKET_RULES), (one, other) => {
        const [before, after] = [planOf(one), planOf(other)];
        if (!before.plan || !after.plan) return;
        const { more, lines, bills } = differencesOf(before, after);
        const sum = [...lines, ...bills].reduce((all, part) => all + part.more, 0);
        // up to half a cent is left out of each line and bill that changes by less
        expect(Math.abs(sum - more)).toBeLessThan(0.005 * (one.lines.length + other.lines.length + 12));
      }),
      { numRuns: 60 },
    );
  });
});
