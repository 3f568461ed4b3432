import { beforeAll, describe, expect, test } from "vitest";
import { openBook, valuesOf } from "../../src/commands/book.js";
import { moneyMissing, moneyOf, rateStep, vendorCurrencyStep } from "../../src/commands/currencies.js";
import { bookBasket, isPlan } from "../../src/commands/order.js";
import { offersOf, wantsOf } from "../../src/commands/orderBook.js";
import { planBasket } from "../../src/commands/planBasket.js";
import { doStep } from "../../src/commands/step.js";
import type { Host } from "../../src/hosts/host.js";
import { bestPlan } from "../../src/solver/bestPlan.js";
import { registerFromSources } from "../../src/start/cellFunctions.js";
import { bench, FILM, order, typeInto } from "./aBench.js";

beforeAll(async () => {
  await registerFromSources();
});

/** One vendor in euros, one in pounds, each with the one part that is bought. */
const TWO = { Lenne: `L1,${FILM},€ 0.50\n`, Wick: `W1,${FILM},£ 0.40\n` };
const moneyIn = async (host: Host) => {
  const book = await openBook(host);
  return moneyOf(book, offersOf(book));
};
const basketIn = async (host: Host) => {
  const book = await openBook(host);
  return bookBasket(book, wantsOf(book));
};

describe("money", () => {
  test("where all lists are in one currency, that is the user's, and sums carry it", async () => {
    const { host } = await bench({ Lenne: TWO.Lenne });
    const money = await moneyIn(host);
    expect([money.own, money.rateOf("EUR"), moneyMissing(money)]).toEqual(["EUR", 1, []]);
    expect((await order(host))[0]).toMatchObject({ cost: 0.5, currency: "EUR" });
  });

  test("a rate that was never given is said and its offers wait: it is not taken to be 1", async () => {
    const { host } = await bench(TWO);
    expect(moneyMissing(await moneyIn(host))).toEqual(["Prices are in EUR and GBP: say which is yours."]);
    expect((await basketIn(host)).offers).toEqual([]);
    await doStep(host, rateStep(await openBook(host), "EUR", 1, "2026-11-25"));
    expect(moneyMissing(await moneyIn(host))).toEqual(["No rate for GBP yet: its offers are left out of the plan."]);
    expect((await basketIn(host)).offers.map(({ vendor }) => vendor)).toEqual(["Lenne"]);
  });

  test("the rate is asked once, kept in Currencies, and weighs shipping too", async () => {
    const { host } = await bench(TWO);
    await doStep(host, rateStep(await openBook(host), "EUR", 1, "2026-11-25"));
    await doStep(host, rateStep(await openBook(host), "GBP", 1.2, "2026-11-25"));
    expect(valuesOf((await openBook(host)).currencies)).toEqual([
      { currency: "EUR", rate: 1, asOf: "2026-11-25" },
      { currency: "GBP", rate: 1.2, asOf: "2026-11-25" },
    ]);
    const { basket, plan, savings } = await planBasket(await basketIn(host), (b) => bestPlan(b, { seconds: 5 }));
    // from Lenne 0.50 + 5.00 EUR; from Wick (0.40 + 5.00) x 1.2 = 6.48 EUR
    expect(isPlan(plan) && plan.cost).toBeCloseTo(5.5, 9);
    expect(basket.currency).toBe("EUR");
    expect(savings).toContain("All from Wick: 6.48 EUR, 0.98 EUR more.");
  });

  test("counting in another currency turns the rates round, and forgets none it knows", async () => {
    const { host } = await bench(TWO);
    for (const [code, rate] of [
      ["EUR", 1],
      ["GBP", 1.25],
      ["GBP", 1],
    ] as const)
      await doStep(host, rateStep(await openBook(host), code, rate, "2026-11-25"));
    const money = await moneyIn(host);
    expect([money.own, money.rateOf("EUR")]).toEqual(["GBP", 0.8]);
  });

  test("an offer in another currency than its vendor's is weighed by both rates", async () => {
    const { host } = await bench({ Lenne: `L1,${FILM},£ 0.40\n` });
    await typeInto(host, "vendors", 1, "currency", "EUR");
    await doStep(host, rateStep(await openBook(host), "EUR", 1, "2026-11-25"));
    await doStep(host, rateStep(await openBook(host), "GBP", 1.25, "2026-11-25"));
    expect((await basketIn(host)).offers[0]!.breaks).toEqual([[1, 0.5]]);
    expect((await order(host))[0]).toMatchObject({ cost: 0.4, currency: "GBP" });
  });

  test("a vendor without a currency beside one with is asked about, and its answer kept", async () => {
    const { host } = await bench({ ...TWO, Wick: `W1,${FILM},0.40\n` });
    expect(moneyMissing(await moneyIn(host))).toEqual([
      "Wick states no currency: its offers are left out of the plan.",
    ]);
    await doStep(host, vendorCurrencyStep(await openBook(host), "Wick", "eur"));
    expect(moneyMissing(await moneyIn(host))).toEqual([]);
  });
});
