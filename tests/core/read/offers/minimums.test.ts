import { describe, expect, test } from "vitest";
import { minimumSaid, multipleSaid } from "../../../../src/core/read/offers/minimums.js";

describe("what a note says of the least to be ordered", () => {
  test.each([
    ["min order 2 packs", 2, "units"],
    ["min. qty 5", 5, "units"],
    ["minimum order: 10 pcs", 10, "pieces"],
    ["please order at least three bags", 3, "units"],
    ["Mindestabnahme 5 Stück", 5, "pieces"],
    ["Mindestens 20 St.", 20, "pieces"],
    ["minimum de commande 4", 4, "units"],
    ["au moins 2 sachets", 2, "units"],
    ["minstens 10 stuks", 10, "pieces"],
  ] as const)("%s", (note, count, of) => {
    expect(minimumSaid(note)).toEqual({ count, of });
  });

  test.each([
    ["minimum order $15", "money is no count"],
    ["Mindestbestellwert 15 Euro", "money in words"],
    ["min. 5 W", "a rating"],
    ["ab 10 V", "volts"],
    ["last 5", "a stock"],
  ])("%s says none: %s", (note) => {
    expect(minimumSaid(note)).toBeNull();
  });

  test.each([
    ["sold in multiples of 2 packs", 2, "units"],
    ["nur in VE zu 5", 5, "units"],
    ["nur zu 10 Stück", 10, "pieces"],
    ["in steps of 25", 25, "units"],
    ["veelvoud van 4", 4, "units"],
    ["par multiple de 6", 6, "units"],
  ] as const)("%s", (note, count, of) => {
    expect(multipleSaid(note)).toEqual({ count, of });
  });
});
