import { describe, expect, test } from "vitest";
import { type Offer, offerOfRow, readPrices, rowOfOffer, writePrices } from "../../../src/core/index.js";

const FILM: Offer = {
  id: "Corwen 4417",
  vendor: "Corwen",
  row: 12,
  stockNumber: "4417",
  description: "0.047 630V axial film",
  kind: "capacitor",
  value: 4.7e-8,
  valueMin: null,
  valueMax: null,
  tolerance: { minus: 0.1, plus: 0.1 },
  watts: null,
  volts: 630,
  voltsKind: "dc",
  technology: ["film", "polypropylene", "axial"],
  safetyClass: null,
  temperatureCoefficient: null,
  taper: null,
  withSwitch: false,
  sections: null,
  newOldStock: false,
  measured: null,
  pack: 10,
  minimum: 1,
  multiple: 1,
  stock: 40,
  breaks: [
    [1, 4.2],
    [5, 3.9],
  ],
  currency: "USD",
  status: "in-stock",
  lengthMetres: 0.019,
  diameterMetres: 0.0085,
  warnings: [],
};

describe("an offer in its row", () => {
  test.each<[string, Offer]>([
    ["a pack of film capacitors", FILM],
    ["a trimmer", { ...FILM, value: null, valueMin: 3e-12, valueMax: 3e-11 }],
    [
      "a can of two sections, old stock, measured",
      {
        ...FILM,
        value: null,
        newOldStock: true,
        sections: [
          { suffix: null, farads: 4e-5, volts: 450 },
          { suffix: "B", farads: 2e-5, volts: 25 },
        ],
        measured: 4.2e-5,
      },
    ],
    ["a control with its switch", { ...FILM, kind: "potentiometer", value: 500_000, taper: "audio", withSwitch: true }],
  ])("%s comes back as it went", (_, offer) => expect(offerOfRow(rowOfOffer(offer))).toEqual(offer));

  test.each<[string, readonly (readonly [number, number])[], string]>([
    [
      "0.31; 10+ 0.232",
      [
        [1, 0.31],
        [10, 0.232],
      ],
      "one price, then breaks",
    ],
    ["10+ 0,232", [[10, 0.232]], "a decimal comma"],
    ["ask; 3.5", [[1, 3.5]], "a word is no price"],
  ])("prices %j read as %j: %s", (cell, breaks) => expect(readPrices(cell)).toEqual(breaks));

  test("prices written are read back", () => {
    expect(readPrices(writePrices(FILM.breaks))).toEqual(FILM.breaks);
  });
});
