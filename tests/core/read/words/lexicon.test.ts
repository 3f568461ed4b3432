import { describe, expect, test } from "vitest";
import { lexemeOf, UNKNOWN } from "../../../../src/core/read/words/lexicon.js";

describe("what a word can be", () => {
  test.each([
    // word, what it is, why: common practice
    ["K", { unit: { measure: null, factor: 1e3 } }, "a prefix of resistors"],
    ["M", { unit: { measure: null, factor: 1e6, capitalM: true } }, "thousand or million, which the document tells"],
    ["m", { unit: { measure: null, factor: 1e6 } }, "a small m is no question of dialect"],
    ["Volts", { unit: { measure: "volt", factor: 1 } }, "a unit in full"],
    ["to", { join: "range" }, "3 to 30"],
    ["±", { side: "both" }, "a tolerance begins"],
    ["three", { isNumber: true }, "three hundred ohms"],
    ["or", { join: "or", digit: 3 }, "a joint, and orange in short"],
  ])("%s is %j: %s", (word, expected, _why) => {
    expect(lexemeOf(word, word.toLowerCase())).toMatchObject(expected);
  });

  test.each(["constructor", "__proto__", "toString", "zzz"])("%s is not a word of the trade", (word) => {
    expect(lexemeOf(word, word)).toBe(UNKNOWN);
  });

  test("a word may begin several phrases, and the longest is tried first", () => {
    const lengths = lexemeOf("same", "same").phrases.map((phrase) => phrase.keys.length);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(lengths.length).toBeGreaterThan(1);
  });
});
