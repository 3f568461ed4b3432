import { describe, expect, test } from "vitest";
import { stockOf } from "../../../src/core/compose/stock.js";
import { usableStock } from "../../../src/core/compose/usableStock.js";
import { wants } from "./someWants.js";

describe("which parts of a drawer are worth looking at", () => {
  const [plain] = stockOf([1000], { watts: 0.5, volts: 350, price: 0.2 });

  test.each([
    [{ ...plain!, watts: 0.25 }, "a weaker one of the same value"],
    [{ ...plain!, price: 0.3 }, "a dearer one"],
    [{ ...plain!, pieces: 3 }, "one of which there are only three"],
    [{ ...plain! }, "the very same again"],
    [{ ...plain!, tolerance: { minus: 0.1, plus: 0.1 } }, "a wider one"],
  ])("%# is passed over beside a better one: %s", (other) => {
    const stock = [plain!, other];
    expect(usableStock(wants({ stock, watts: 1, volts: 300, mostPrice: 1 }))).toEqual([plain]);
    expect(usableStock(wants({ stock: [...stock].reverse(), watts: 1, volts: 300, mostPrice: 1 }))).toEqual([plain]);
  });

  test("two of which there is one piece each are two pieces", () => {
    const single = { ...plain!, pieces: 1 };
    expect(usableStock(wants({ stock: [single, { ...single }], watts: 1 }))).toHaveLength(2);
  });

  test("one that is better in one way and worse in another stays", () => {
    const stock = [plain!, { ...plain!, watts: 1, price: 0.4 }];
    expect(usableStock(wants({ stock, watts: 1, mostPrice: 1 }))).toHaveLength(2);
  });

  test("capacitors stand in the order of what they oppose: the largest first", () => {
    const stock = stockOf([1e-9, 3e-9, 2e-9]);
    expect(usableStock(wants({ kind: "capacitor", stock })).map(({ value }) => value)).toEqual([3e-9, 2e-9, 1e-9]);
  });
});
