import { describe, expect, test } from "vitest";
import { csvOf, handoutsOf, orderSheets, type Plan } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";

const basket = basketOf(
  [vendorOf("A")],
  [offerOf("A-1", 0.9, { pack: 5 })],
  [lineOf("L1", 3, ["A-1"]), lineOf("L2", 4, ["A-1"])],
);
const plan: Plan = {
  cost: 5.8,
  bound: 5.8,
  orders: [{ offer: "A-1", units: 2 }],
  supplies: [
    { offer: "A-1", line: "L1", pieces: 3 },
    { offer: "A-1", line: "L2", pieces: 4 },
  ],
};

describe("the papers of an order", () => {
  test("who gets what: part by part, and three of two packs of five to stock", () => {
    const asked = [
      {
        id: "L1",
        demands: [
          { part: "HL-1", pieces: 1 },
          { part: "KT-9", pieces: 1 },
        ],
      },
      { id: "L2", demands: [{ part: "HL-7", pieces: 4 }] },
    ];
    expect(handoutsOf(basket, plan, asked)).toEqual([
      { offer: "A-1", part: "HL-1", pieces: 1 },
      { offer: "A-1", part: "KT-9", pieces: 1 },
      { offer: "A-1", part: "HL-7", pieces: 4 },
      { offer: "A-1", part: null, pieces: 4 },
    ]);
  });

  test("an order sheet for each vendor, in its own numbers and sales units", () => {
    const line = {
      vendor: "A",
      stockNumber: "4417",
      description: "470 k 1 W",
      units: 2,
      pack: 5,
      price: 0.9,
      cost: 1.8,
      currency: "EUR",
    };
    expect(orderSheets([line, { ...line, vendor: "B" }, { ...line, stockNumber: "4418" }])).toMatchObject([
      {
        name: "A",
        heads: ["stock number", "description", "units", "pack", "pieces", "price", "cost", "currency"],
        rows: [
          ["4417", "470 k 1 W", 2, 5, 10, 0.9, 1.8, "EUR"],
          ["4418", "470 k 1 W", 2, 5, 10, 0.9, 1.8, "EUR"],
        ],
      },
      { name: "B" },
    ]);
  });

  test("as CSV: quotes where needed (RFC 4180), and no text that runs as a formula", () => {
    const table = {
      name: "x",
      heads: ["a", "b"],
      rows: [
        ['1/2" body, axial', "=1+41"],
        [0.1 + 0.2, null],
      ],
    };
    expect(csvOf(table)).toBe(`a,b\r\n"1/2"" body, axial",'=1+41\r\n0.3,\r\n`);
  });
});
