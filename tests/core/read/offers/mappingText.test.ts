import { describe, expect, test } from "vitest";
import { guessMapping, readOffers, withMapping, writeMapping } from "../../../../src/core/index.js";
import { readText } from "../../../../src/sources/text.js";

const linesOf = (text: string) => readText(text, "list.csv").lines;
const LIST = "No;Text;Menge;1+;25+\nA1;Widerstand 470 Ω 1 W;30;0,10;0,08\nA2;Widerstand 1 kΩ 1 W;12;0,10;0,08";

describe("a vendor's columns are shown, corrected and remembered", () => {
  test("each column stands in the cell with what it holds", () => {
    expect(writeMapping(guessMapping(linesOf(LIST)))).toBe(
      "No: stock number; Text: description; Menge: stock; 1+: price; 25+: price",
    );
  });

  test("what was shown gives the same layout back", () => {
    const guess = guessMapping(linesOf(LIST));
    expect(withMapping(guess, writeMapping(guess))).toEqual(guess);
  });

  test("a correction holds for the next list, though the vendor has moved the columns", () => {
    const corrected = writeMapping(guessMapping(linesOf(LIST))).replace("Menge: stock", "Menge: pack");
    const next = linesOf("Text;No;Neu;Menge;1+;25+\nWiderstand 470 Ω 1 W;A1;x;5;1,00;0,80");
    const { offers } = readOffers(next, { mapping: withMapping(guessMapping(next), corrected) });
    expect(offers[0]).toMatchObject({ stockNumber: "A1", pack: 5, stock: null });
    expect(offers[0]?.breaks).toEqual([
      [1, 1],
      [25, 0.8],
    ]);
  });
});
