import { beforeAll, describe, expect, test } from "vitest";
import { type Cell, PartsError } from "../../src/core/index.js";
import { amount, choice, count, positive, text } from "../../src/functions/ask.js";
import { type Answer, type Ask, cell, each, spill } from "../../src/functions/cell.js";
import { provideCustomFunctions } from "./customFunctions.js";

beforeAll(provideCustomFunctions);

const half = (given: unknown) => each([positive(given, "ohms")], (ohms) => ohms / 2);
const sum = (a: unknown, b: unknown) => each([amount(a, "a"), amount(b, "b", 100)], (x, y) => x + y);
const notAvailable = { code: "#N/A" };

function thrownBy(work: () => Answer): unknown {
  try {
    return work();
  } catch (error) {
    return error;
  }
}

describe("a cell function over ranges answers as the sheet's own functions do", () => {
  test.each<[unknown, unknown, unknown, string]>([
    // a, b, answer, why
    [1, 2, [[3]], "single values"],
    [[[1], [2]], 10, [[11], [12]], "one value serves a whole column"],
    [
      [[1, 2]],
      [[10], [20]],
      [
        [11, 12],
        [21, 22],
      ],
      "a row meets a column as a table",
    ],
    [[[1], [null], [3]], 10, [[11], [""], [13]], "a blank stays blank, and is no zero"],
    [[[1], [" "]], undefined, [[101], [""]], "an argument left out takes its default"],
    [[[1, 2]], [[null, 5]], [[101, 7]], "a blank optional takes its default too"],
    [[[0]], 1, [[1]], "a reading of 0 is a reading"],
    ["7", "3", [[10]], "a number written as text counts"],
  ])("%j and %j: %s", (a, b, answer) => expect(sum(a, b)).toEqual(answer));

  test("a bad cell is one error, and the rest of the column stands", () => {
    const answer = half([[10], ["abc"], [30]]);
    expect(answer[0]).toEqual([5]);
    expect(answer[1]![0]).toMatchObject({ code: "#VALUE!", message: 'ohms: Can\'t read "abc". Give a plain number.' });
    expect(answer[2]).toEqual([15]);
  });

  test("an error in a lone cell is thrown, which is how hosts show its message", () => {
    expect(thrownBy(() => half("abc"))).toMatchObject({ code: "#VALUE!" });
  });

  test("where one range is shorter than the other the surplus is #N/A", () => {
    expect(sum([[1], [2], [3]], [[1], [2]])[2]![0]).toMatchObject(notAvailable);
  });

  test("an error in a cell the function reads is handed on", () => {
    const broken = new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "from elsewhere");
    expect(half([[broken], [4]])).toEqual([[broken], [2]]);
  });

  test("an empty cell that Excel for desktop hands over as 0 stays blank where 0 means nothing", () => {
    expect(half([[0], [4]])).toEqual([[""], [2]]);
  });

  test("a mistake of ours is not dressed up as the user's", () => {
    expect(() => each([amount(1, "a")], () => (undefined as unknown as number[])[0]!)).toThrow(TypeError);
  });
});

describe("a function that spills", () => {
  const pairs = (given: unknown) =>
    spill([positive(given, "ohms")], (ohms) => [
      [ohms, "best"],
      [ohms + 1, "second"],
    ]);

  test("gives its whole block for a single value", () => {
    expect(pairs(5)).toEqual([
      [5, "best"],
      [6, "second"],
    ]);
  });

  test("gives the best line for each cell of a column, so that a table can be filled", () => {
    expect(pairs([[5], [null], [7]])).toEqual([
      [5, "best"],
      ["", ""],
      [7, "best"],
    ]);
  });

  test("says so when it is given several columns", () => {
    expect(thrownBy(() => pairs([[1, 2]]))).toMatchObject({ code: "#VALUE!" });
  });
});

describe("a function over whole ranges", () => {
  test("fills short rows with blanks, for hosts refuse ragged blocks", () => {
    expect(cell(() => [[1, 2], [3]])).toEqual([
      [1, 2],
      [3, ""],
    ]);
  });

  test("says #N/A where there is no such thing", () => {
    const nothing = () =>
      cell(() => {
        throw new PartsError("none-within", "1 %", "The nearest is 3 % off.");
      });
    expect(thrownBy(nothing)).toMatchObject({ ...notAvailable, message: "None within 1 %. The nearest is 3 % off." });
  });
});

describe("arguments", () => {
  const reading = (ask: Ask<unknown>, given: unknown) => ask.read(given as Cell);

  test.each<[Ask<unknown>, unknown, unknown, string]>([
    [count(null, "most"), 3, 3, "a count"],
    [count(null, "most", 5), null, 5, "a count left out"],
    [text(null, "none"), " Old ", "Old", "text loses its outer spaces"],
    [choice(null, "rule", ["ratio", "not below"]), "Not Below", "not below", "a choice is found in any case"],
  ])("reads %o of %j as %j: %s", (ask, given, found) => expect(reading(ask, given)).toBe(found));

  test.each<[Ask<unknown>, unknown, string]>([
    [count(null, "most"), 2.5, "Give a whole number."],
    [positive(null, "watts"), -1, "Give a number above 0."],
    [amount(null, "volts"), true, "Give a plain number."],
    [choice(null, "rule", ["ratio", "not below"]), "up", "Give one of: ratio, not below."],
  ])("refuses in %o the cell %j: %s", (ask, given, message) => expect(() => reading(ask, given)).toThrow(message));
});
