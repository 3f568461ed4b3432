import { describe, expect, test } from "vitest";
import { pricesIn } from "../../src/functions/pricesIn.js";

describe("prices as they stand in a sheet", () => {
  test.each([
    [0.3, [[1, 0.3]], "one price"],
    ["0.3", [[1, 0.3]], "one price as text"],
    [
      "0.31; 10+ 0.25",
      [
        [1, 0.31],
        [10, 0.25],
      ],
      "the breaks of an offer, as the sheet Offers holds them",
    ],
    [
      [
        [10, 0.25],
        [1, 0.31],
      ],
      [
        [1, 0.31],
        [10, 0.25],
      ],
      "two columns, in any order",
    ],
    [
      [
        [1, 0.31],
        [null, null],
      ],
      [[1, 0.31]],
      "an empty row in between",
    ],
  ])("%j is %j: %s", (...[given, breaks]) => expect(pricesIn(given)).toEqual(breaks));

  test.each([
    ["cheap", "Write prices like 0.31"],
    [null, "Give a price"],
    [[[1, "much"]], 'Can\'t read "much"'],
  ])("%j is refused: %s", (given, message) => expect(() => pricesIn(given)).toThrow(message));
});
