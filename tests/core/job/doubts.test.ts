import { describe, expect, test } from "vitest";
import { withDoubts } from "../../../src/core/job/doubts.js";
import { NOTHING_LISTED } from "../../../src/core/part.js";

const part = (line: number, printed: string) => ({ ...NOTHING_LISTED, lines: [line], printed });
const PARTS = [part(3, "R1 470K 1/2 W"), part(4, "R2 33K TW"), part(4, "R3 33K 1 W")];
const codes = (doubts: Parameters<typeof withDoubts>[1]) =>
  withDoubts(PARTS, doubts).map(({ warnings }) => warnings.map(({ code }) => code));

describe("words of a scan that could not be made out", () => {
  test.each([
    // doubts, warnings of the three parts, why
    [[], [[], [], []], "a clear page warns of nothing"],
    [[{ line: 4, word: "TW" }], [[], ["unreadable"], []], "the part that prints the word is meant"],
    [
      [{ line: 4, word: "~" }],
      [[], ["unreadable"], ["unreadable"]],
      "a word that no part prints may belong to any of its line",
    ],
    [[{ line: 9, word: "Page" }], [[], [], []], "a line without parts has none to warn"],
  ])("%j: %j, %s", (doubts, expected, _why) => {
    expect(codes(doubts)).toEqual(expected);
  });

  test("the warning names the word, so that it can be looked for", () => {
    expect(withDoubts(PARTS, [{ line: 4, word: "TW" }])[1]!.warnings[0]!.text).toContain('"TW"');
  });
});
