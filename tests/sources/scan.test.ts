import { describe, expect, test } from "vitest";
import { readSource } from "../../src/sources/readSource.js";
import { doubtsOf } from "../../src/sources/scan/doubts.js";
import { pictureSize } from "../../src/sources/scan/pictureSize.js";
import { type ScannedLine, scannedText } from "../../src/sources/scan/scannedText.js";

/** A line of words at these places, each letter ten dots wide, all read for certain. */
function scanned(...words: readonly (readonly [text: string, x: number])[]): ScannedLine {
  const box = (text: string, x0: number) => ({ x0, x1: x0 + 10 * text.length, y0: 0, y1: 20 });
  const all = words.map(([text, x0]) => ({ text, confidence: 95, bbox: box(text, x0) }));
  return { words: all, bbox: { x0: 0, y0: 0, x1: 1000, y1: 20 } } as unknown as ScannedLine;
}

describe("scanned words become lines", () => {
  test("a wide gap keeps its columns, a narrow one is a blank", () => {
    expect(scannedText(scanned(["R1", 0], ["470K", 200], ["1/2", 250], ["W", 290]))).toBe(
      `R1${" ".repeat(18)}470K 1/2 W`,
    );
  });

  test.each([
    ["w", "1W whose 1 was lost"],
    ["TW", "a 1 taken for a T"],
    ["lW", "a 1 taken for an l"],
    ["I0%", "a 1 taken for an I"],
    ["O5V", "a 0 taken for an O"],
  ])("%j is shown as doubtful: %s", (word) => {
    expect(doubtsOf([scanned(["33K", 0], ["each", 50], [word, 100])], null).map((doubt) => doubt.word)).toEqual([word]);
  });

  test("a doubtful word says where it stands on the picture", () => {
    const [doubt] = doubtsOf([scanned(["33K", 0], ["TW", 100])], { width: 1000, height: 200 });
    // The second word is two letters of ten dots each, from dot 100 on, on a line 20 dots high.
    expect(doubt!.place).toEqual({ line: 1, page: 1, top: 0, bottom: 0.1, left: 0.1, right: 0.12 });
  });

  test("a unit set apart from its number is in no doubt", () => {
    expect(doubtsOf([scanned(["1", 0], ["W", 20], ["5", 50], ["V", 70])], null)).toEqual([]);
  });
});

describe("pictures", () => {
  const png = Uint8Array.of(
    0x89,
    0x50,
    0x4e,
    0x47,
    13,
    10,
    26,
    10,
    0,
    0,
    0,
    13,
    73,
    72,
    68,
    82,
    0,
    0,
    1,
    0,
    0,
    0,
    2,
    1,
    8,
  );
  const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 4, 0, 0, 0xff, 0xc0, 0, 11, 8, 1, 44, 2, 0, 1, 0, 0, 0);

  test.each([
    ["PNG", png, { width: 256, height: 513 }],
    ["JPEG", jpeg, { width: 512, height: 300 }],
    ["picture of another kind", Uint8Array.of(0x42, 0x4d, 0, 0), null],
  ])("a %s says how large it is", (_, bytes, size) => expect(pictureSize(bytes)).toEqual(size));

  test("a damaged one says so and leaves nothing running", async () => {
    await expect(readSource("page.png", png)).rejects.toThrow(/damaged/);
  });

  test("one that takes too long is stopped", async () => {
    await expect(readSource("page.png", png, { timeLimit: 0.001 })).rejects.toThrow(/more than 0.001 s/);
  });
});
